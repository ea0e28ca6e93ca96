package wickbench.api.reading;

import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;

/** A run control of a kit that the site's rule asks for. */
public record DueControl(RunControl control, MethodId method, LotId lot) {}
