package wickbench.api.check;

import java.util.List;
import java.util.stream.Collectors;

/** Ends an act because its input is wrong; nothing was done. The command line ends with 2. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Complaint> complaints;

    public BadInput(List<Complaint> complaints) {
        super(complaints.stream().map(Complaint::oneLine).collect(Collectors.joining("\n")));
        this.complaints = List.copyOf(complaints);
    }

    public BadInput(Complaint complaint) {
        this(List.of(complaint));
    }

    public List<Complaint> complaints() {
        return complaints;
    }
}
