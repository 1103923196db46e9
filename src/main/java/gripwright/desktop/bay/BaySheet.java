package gripwright.desktop.bay;

import gripwright.charts.Pattern;
import gripwright.planning.FairTest;
import gripwright.planning.WhatNext;
import java.util.List;

/**
 * Everything that stands on the sheet of the bay at one moment, ready to be written; parts that are equal to the ones
 * before need no redrawing.
 *
 * @param stintId the stint that is shown: the one in hand, else the last that was hit; null where there is none
 * @param hand the configuration in hand
 * @param last the last shot
 * @param queue the stints
 * @param shots the shots of the stint shown, newest first
 * @param shotColumns headings of their cells
 * @param strips one a primary metric
 * @param pattern carry and offline; null where there is nothing to draw
 * @param next what to hit next, and why
 * @param warnings of the fair test
 * @param swings all swings of the day
 * @param tray how many shots wait for a place
 * @param reminder what has to be looked at before the next swing; may be empty
 * @param rehearsal whether rehearsal shots are in the session
 * @param empty what is missing before anything can be hit; empty where nothing is
 */
public record BaySheet(String stintId, HandCard hand, LastShot last, List<QueueRow> queue, List<ShotRow> shots,
        List<String> shotColumns, List<BayStrip> strips, Pattern pattern, WhatNext next,
        List<FairTest.Warning> warnings, SwingCount swings, int tray, String reminder, boolean rehearsal,
        String empty) {

    public BaySheet {
        queue = List.copyOf(queue);
        shots = List.copyOf(shots);
        shotColumns = List.copyOf(shotColumns);
        strips = List.copyOf(strips);
        warnings = List.copyOf(warnings);
    }
}
