package wickbench.bench.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.method.Methods;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;

/** No strip can be read without a method in force. */
@Component
public final class FirstMethods implements FirstSteps {
    private final Methods methods;

    @Activate
    public FirstMethods(@Reference Methods methods) {
        this.methods = methods;
    }

    @Override
    public List<FirstStep> steps() {
        return List.of(new FirstStep(
                40,
                BenchUiWords.get("step.method"),
                BenchUiWords.get("step.method.text"),
                !methods.all().isEmpty(),
                "methods",
                ""));
    }
}
