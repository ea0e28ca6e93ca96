package wickbench.people.ui;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Work;

/** The first thing of all: names the station and makes the first administrator. */
final class FirstStart {
    private final PeopleDoors doors;

    FirstStart(PeopleDoors doors) {
        this.doors = doors;
    }

    /** What was typed. */
    private record First(Optional<Founding> founding, PersonId id, String name, Passphrase passphrase) {}

    /**
     * @param founded whether the station has its name already
     */
    void fill(Composite parent, PageContext context, boolean founded, Runnable grown, Runnable done) {
        Section section = new Section(parent, context, "first", grown).narrow().main();
        Optional<Field<Text>> station = founded ? Optional.empty() : Optional.of(section.text("station"));
        Optional<Field<Text>> zone = founded ? Optional.empty() : Optional.of(section.text("zone"));
        station.ifPresent(field -> field.control().setText("station-1"));
        zone.ifPresent(field -> field.control().setText(ZoneId.systemDefault().getId()));
        Field<Text> id = section.text("id");
        Field<Text> name = section.text("name");
        Fresh fresh = Fresh.in(section, "fresh");
        section.act(
                "first.act",
                new Permission.Allowed(),
                () -> first(station, zone, id, name, fresh).<Work<PersonId>>map(typed -> progress -> begin(typed)),
                done);
    }

    private PersonId begin(First first) {
        first.founding().ifPresent(doors.journal()::found);
        if (doors.people().find(first.id()).isEmpty()) {
            doors.people().enrol(first.id(), first.name(), Set.of(Role.ADMINISTRATOR), first.id());
        }
        doors.credentials().set(first.id(), Optional.empty(), first.passphrase());
        return first.id();
    }

    private static Optional<First> first(
            Optional<Field<Text>> station, Optional<Field<Text>> zone, Field<Text> id, Field<Text> name, Fresh fresh) {
        Optional<PersonId> who = EnrolForm.person(id);
        if (who.isEmpty()) {
            return Optional.empty();
        }
        try {
            Optional<Founding> founding = station.map(field -> new Founding(
                    new StationId(field.control().getText().strip()),
                    ZoneId.of(zone.orElseThrow().control().getText().strip()),
                    OptionalLong.empty()));
            return fresh.take()
                    .map(typed -> new First(founding, who.get(), name.control().getText(), typed));
        } catch (DateTimeException e) {
            zone.orElseThrow().complain(PeopleUiWords.get("zone.form"));
        } catch (IllegalArgumentException e) {
            station.orElseThrow().complain(PeopleUiWords.get("station.form"));
        }
        return Optional.empty();
    }
}
