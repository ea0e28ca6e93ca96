package wickbench.journal.ui;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;

/** A view that keeps the number of each entry, and once shut waits at one of them until it is opened. */
final class Gate implements IndexView {
    private final long at;
    private volatile CountDownLatch reached = new CountDownLatch(0);
    private volatile CountDownLatch open = new CountDownLatch(0);

    Gate(long at) {
        this.at = at;
    }

    void shut() {
        reached = new CountDownLatch(1);
        open = new CountDownLatch(1);
    }

    boolean reached() {
        return reached.getCount() == 0;
    }

    void open() {
        open.countDown();
    }

    @Override
    public String name() {
        return "gate";
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        return List.of("create table passed (seq bigint primary key)");
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.ref().seq() == at) {
            reached.countDown();
            try {
                open.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        rows.write("insert into passed values (?)", entry.ref().seq());
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }
}
