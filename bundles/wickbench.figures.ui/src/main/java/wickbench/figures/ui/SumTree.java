package wickbench.figures.ui;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.Topic;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTree;
import wickbench.widgets.Type;

/** The sums, each below the question that it answers. */
final class SumTree {
    private static final int WIDTH = 246;

    private final Tree tree;
    private final Map<String, TreeItem> items = new HashMap<>();

    SumTree(Composite parent, Theme theme, Consumer<Sum> chosen) {
        tree = ThemedTree.make(parent, theme, () -> FiguresUiWords.get("figures.list"));
        Map<Topic, TreeItem> topics = new HashMap<>();
        for (Sum sum : Sums.all()) {
            TreeItem topic = topics.computeIfAbsent(sum.topic(), each -> topic(each, theme));
            TreeItem item = new TreeItem(topic, SWT.NONE);
            item.setText(sum.title());
            item.setData(sum);
            items.put(sum.id(), item);
            topic.setExpanded(true);
        }
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = theme.px(WIDTH);
        tree.setLayoutData(data);
        tree.addListener(SWT.Selection, event -> {
            if (event.item.getData() instanceof Sum sum) {
                chosen.accept(sum);
            }
        });
    }

    private TreeItem topic(Topic topic, Theme theme) {
        TreeItem item = new TreeItem(tree, SWT.NONE);
        item.setText(topic.title());
        item.setFont(theme.font(Type.STRONG));
        return item;
    }

    void select(Sum sum) {
        TreeItem item = items.get(sum.id());
        tree.setSelection(item);
        tree.showItem(item);
    }

    void focus() {
        tree.setFocus();
    }
}
