package wickbench.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * One page.
 *
 * @param text Markdown, with tables
 * @param within where its source lies among the docs
 */
record Sheet(String text, Path within, Contents contents) {
    private static final List<Extension> EXTENSIONS =
            List.of(TablesExtension.create(), HeadingAnchorExtension.create());

    String html() {
        Node page = Parser.builder().extensions(EXTENSIONS).build().parse(text);
        page.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                link.setDestination(Guide.page(link.getDestination()));
                visitChildren(link);
            }
        });
        String body = HtmlRenderer.builder()
                .extensions(EXTENSIONS)
                .build()
                .render(page)
                .strip();
        return frame().replace("@TITLE@", escaped(title()))
                .replace(
                        "@CHAPTERS@",
                        contents.html(Guide.page(within.toString()), "../".repeat(within.getNameCount() - 1)))
                .replace("@BODY@", body);
    }

    private String title() {
        return text.lines()
                .filter(line -> line.startsWith("# "))
                .findFirst()
                .map(line -> line.substring(2))
                .orElse(within.toString());
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String frame() {
        try (InputStream in = Sheet.class.getResourceAsStream("page.html")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
