package wickbench.benchmarks;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** A window with a table of a few rows from a new database file; its own class alone, for it is packed into a bundle. */
public final class BareWindow implements BundleActivator, Runnable {
    private static final int ROWS = 20;
    private Path folder;

    @Override
    public void start(BundleContext context) {
        folder = context.getDataFile("").toPath();
        context.registerService(Runnable.class, this, null);
    }

    @Override
    public void stop(BundleContext context) {
        // the window is closed by then
    }

    @Override
    public void run() {
        Display display = new Display();
        Shell shell = new Shell(display);
        shell.setLayout(new FillLayout());
        Table table = new Table(shell, SWT.NONE);
        try {
            fill(table);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        shell.setSize(1280, 800);
        shell.open();
        while (display.readAndDispatch()) {
            // until everything is painted
        }
        System.out.println("bare window usable");
        while (!shell.isDisposed()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }

    private void fill(Table table) throws SQLException {
        try (Connection connection =
                        new org.h2.Driver().connect("jdbc:h2:" + folder.resolve("bare"), new java.util.Properties());
                Statement statement = connection.createStatement()) {
            statement.execute("create table note (id integer primary key, text varchar(100))");
            for (int i = 0; i < ROWS; i++) {
                statement.execute("insert into note values (" + i + ", 'note " + i + "')");
            }
            try (var rows = statement.executeQuery("select text from note order by id")) {
                while (rows.next()) {
                    new TableItem(table, SWT.NONE).setText(rows.getString(1));
                }
            }
        }
    }
}
