package wickbench.guide;

import java.util.List;
import java.util.stream.Collectors;

/** The chapters of the guide, as each page lists them. */
record Contents(List<Chapter> chapters) {

    /** @param page its file, beside the others */
    record Chapter(String page, String title) {}

    /**
     * Returns the list of chapters.
     *
     * @param here the page that it stands on
     * @param up how that page reaches the folder of the chapters, such as {@code ../}
     */
    String html(String here, String up) {
        return chapters.stream()
                .map(chapter -> "<li><a href=\"%s%s\"%s>%s</a></li>"
                        .formatted(
                                up,
                                chapter.page(),
                                chapter.page().equals(here) ? " aria-current=\"page\"" : "",
                                Sheet.escaped(chapter.title())))
                .collect(Collectors.joining("\n", "<ul>\n", "\n</ul>"));
    }
}
