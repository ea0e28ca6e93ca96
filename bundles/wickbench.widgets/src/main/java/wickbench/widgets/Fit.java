package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Control;

/** How a control sits in its cell of a grid; each returns the control. */
public final class Fit {
    private Fit() {}

    /** Takes all room there is. */
    public static <C extends Control> C grow(C control) {
        return put(control, new GridData(SWT.FILL, SWT.FILL, true, true));
    }

    /** Takes the whole width. */
    public static <C extends Control> C wide(C control) {
        return put(control, new GridData(SWT.FILL, SWT.CENTER, true, false));
    }

    /** Takes the whole width over several columns. */
    public static <C extends Control> C wide(C control, int columns) {
        return put(control, new GridData(SWT.FILL, SWT.CENTER, true, false, columns, 1));
    }

    /** Takes the whole height. */
    public static <C extends Control> C tall(C control) {
        return put(control, new GridData(SWT.FILL, SWT.FILL, false, true));
    }

    /** Is as wide as told, in pixels of the screen. */
    public static <C extends Control> C width(C control, int width) {
        GridData data = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        data.widthHint = width;
        return put(control, data);
    }

    /** Stands at the top of its cell. */
    public static <C extends Control> C top(C control) {
        return put(control, new GridData(SWT.FILL, SWT.BEGINNING, false, false));
    }

    /** Stands at the right end of its cell and pushes it wide. */
    public static <C extends Control> C right(C control) {
        return put(control, new GridData(SWT.END, SWT.CENTER, true, false));
    }

    private static <C extends Control> C put(C control, GridData data) {
        control.setLayoutData(data);
        return control;
    }
}
