package wickbench.attachments;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.attachment.Attachments;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;

/** Brings {@code wickbench attach …}. */
@Component(property = CommandSet.NAME + "=attach")
public final class AttachCommands implements CommandSet {
    private final Attachments attachments;
    private final Index index;

    @Activate
    public AttachCommands(@Reference Attachments attachments, @Reference Index index) {
        this.attachments = attachments;
        this.index = index;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new AttachCommand(attachments, index, terminal);
    }
}
