package gripwright.model;

import java.util.List;

/**
 * The shop's stock list.
 *
 * @param grips grips, in the shop's order
 * @param tapes tapes, in the shop's order
 */
public record Stock(List<Grip> grips, List<Tape> tapes) {

    public Stock {
        grips = Check.list(grips);
        tapes = Check.list(tapes);
    }

    public Stock withGrips(List<Grip> grips) {
        return new Stock(grips, tapes);
    }

    public Stock withTapes(List<Tape> tapes) {
        return new Stock(grips, tapes);
    }
}
