package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Constructor;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/**
 * Files let fall on a control.
 *
 * <p>Not a drag: without a window manager and a second program nobody offers files by the drag protocol of X. It is what comes after
 * it, the very event that the toolkit's drop target sends to its listeners once the files are there, sent to the target that stands on the
 * control; a control without one, or one that takes no files, fails. The event's class is the toolkit's own, so it is made by reflection.
 */
final class DroppedFiles {
    private DroppedFiles() {}

    static void on(Control control, String... files) throws ReflectiveOperationException {
        DropTarget target = (DropTarget) control.getData(DND.DROP_TARGET_KEY);
        assertThat(target.getTransfer()).contains(FileTransfer.getInstance());
        Constructor<?> made = Class.forName("org.eclipse.swt.dnd.DNDEvent").getDeclaredConstructor();
        made.setAccessible(true);
        Event drop = (Event) made.newInstance();
        drop.widget = target;
        drop.detail = DND.DROP_COPY;
        drop.data = files;
        target.notifyListeners(DND.Drop, drop);
    }
}
