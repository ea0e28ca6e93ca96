package wickbench.bench.ui;

import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.StripState;

/** A strip with its verdict. */
record Judged(StripState strip, RecordedReading reading) {}
