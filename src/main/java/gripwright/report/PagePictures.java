package gripwright.report;

import gripwright.charts.Picture;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The pictures of a page on their way from the content to the drawer, each under a name. */
final class PagePictures {

    private final Map<String, Picture> pictures = new LinkedHashMap<>();

    /** Keeps a picture and gives back the name that the template refers to it by. */
    String add(Picture picture) {
        String name = "picture-" + (pictures.size() + 1);
        pictures.put(name, picture);
        return name;
    }

    Optional<Picture> named(String name) {
        return Optional.ofNullable(pictures.get(name));
    }
}
