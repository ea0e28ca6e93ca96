package wickbench.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.service.component.ComponentServiceObjects;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The pages installed at this moment; those who listen hear, on any thread, that they changed. */
@Component(service = Places.class)
public final class Places {
    private final Map<String, Place> places = new ConcurrentHashMap<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            target = "(" + Page.ID + "=*)")
    void add(ComponentServiceObjects<Page> page, Map<String, Object> properties) {
        String id = properties.get(Page.ID).toString();
        int rank = properties.get(Page.RANK) instanceof Integer told ? told : Integer.MAX_VALUE;
        places.put(id, new Place(id, rank, new OfferedPage(page)));
        listeners.forEach(Runnable::run);
    }

    void remove(ComponentServiceObjects<Page> page) {
        places.values().removeIf(place -> place.offered().is(page));
        listeners.forEach(Runnable::run);
    }

    /** Returns the places from top to bottom. */
    List<Place> all() {
        return places.values().stream().sorted().toList();
    }

    Optional<Place> find(String id) {
        return Optional.ofNullable(places.get(id));
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    void forget(Runnable listener) {
        listeners.remove(listener);
    }
}
