package wickbench.people.ui;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.person.Role;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;

/** A box to tick for each role; none implies another. */
final class RoleChecks {
    private final Map<Role, Button> boxes = new EnumMap<>(Role.class);

    RoleChecks(Composite parent, PageContext context, Set<Role> ticked) {
        Controls controls = context.theme().controls();
        Composite row = controls.row(parent);
        for (Role role : Role.values()) {
            Button box = controls.check(row, PersonRow.word(role));
            box.setSelection(ticked.contains(role));
            boxes.put(role, box);
        }
    }

    Set<Role> ticked() {
        Set<Role> ticked = new TreeSet<>();
        boxes.forEach((role, box) -> {
            if (box.getSelection()) {
                ticked.add(role);
            }
        });
        return ticked;
    }

    void tick(Role role) {
        boxes.get(role).setSelection(true);
    }
}
