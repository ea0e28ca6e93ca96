package wickbench.people.ui;

import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Work;

/** Enrols one more person. */
final class EnrolForm {
    private final PeopleDoors doors;

    EnrolForm(PeopleDoors doors) {
        this.doors = doors;
    }

    void fill(Composite parent, PageContext context, PersonId actor, Permission may, Runnable grown, Runnable done) {
        Section section = new Section(parent, context, "enrol", grown).main();
        Field<Text> id = section.text("id");
        Field<Text> name = section.text("name");
        RoleChecks roles = new RoleChecks(section.card(), context, Set.of(Role.OPERATOR));
        section.act(
                "enrol.act",
                may,
                () -> person(id).<Work<Object>>map(who -> {
                    String called = name.control().getText();
                    Set<Role> ticked = roles.ticked();
                    return progress -> doors.people().enrol(who, called, ticked, actor);
                }),
                done);
        id.control().setFocus();
    }

    /** Reads an id; says below the field what is wrong with it. */
    static Optional<PersonId> person(Field<Text> field) {
        field.clear();
        try {
            return Optional.of(new PersonId(field.control().getText().strip()));
        } catch (IllegalArgumentException e) {
            field.complain(PeopleUiWords.get("id.form"));
            return Optional.empty();
        }
    }
}
