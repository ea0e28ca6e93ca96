package wickbench.widgets;

import java.util.stream.Collectors;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import wickbench.api.method.LineRole;

/** What a screen reader hears of a strip: a list of lines, each with its state. */
record StripReaderVoice(StripDrawing strip) {

    void speak() {
        strip.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? whole() : line(event.childID);
            }
        });
        strip.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
            }

            @Override
            public void getChildCount(AccessibleControlEvent event) {
                event.detail = strip.format().lines().size();
            }

            @Override
            public void getFocus(AccessibleControlEvent event) {
                event.childID =
                        strip.isFocusControl() ? strip.format().lines().indexOf(strip.line()) : ACC.CHILDID_NONE;
            }
        });
    }

    String whole() {
        return WidgetWords.get(
                "strip.voice", strip.format().lines().stream().map(this::line).collect(Collectors.joining("; ")));
    }

    private String line(int child) {
        return line(strip.format().lines().get(child));
    }

    private String line(LineRole role) {
        return WidgetWords.get(
                "strip.voice.line", WidgetWords.get("strip.line." + role.code()), strip.mark(role), strip.says(role));
    }
}
