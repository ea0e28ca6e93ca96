package wickbench.parts.health;

import java.util.ArrayList;
import java.util.List;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.part.Health;
import wickbench.api.part.SelfCheck;
import wickbench.parts.kept.HomeSets;

/** Looks at the framework, the home and what is recorded in it. */
@Component
public final class HouseCheck implements SelfCheck {
    private final Home house;
    private final Journal journal;
    private final ProgramHealth program;
    private final HomeHealth home;
    private final RecordHealth records;

    @Activate
    public HouseCheck(
            BundleContext context,
            @Reference ServiceComponentRuntime components,
            @Reference HomeSets sets,
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index) {
        this.house = home;
        this.journal = journal;
        program = new ProgramHealth(context, components, sets);
        this.home = new HomeHealth(home, journal);
        records = new RecordHealth(home, journal, index);
    }

    @Override
    public List<Health> look() {
        Holder.answers(house, journal);
        List<Health> all = new ArrayList<>();
        all.add(program.bundles());
        all.add(program.services());
        all.add(program.sets());
        all.add(home.disk());
        all.add(home.clock());
        all.add(records.key());
        all.add(records.journal());
        all.add(records.index());
        return all;
    }
}
