package wickbench.console.door;

import java.io.IOException;
import java.nio.channels.SocketChannel;
import jdk.net.ExtendedSocketOptions;
import jdk.net.UnixDomainPrincipal;

/** Who stands at the other end of a connection, as the operating system tells. */
final class Peer {
    private Peer() {}

    /** Tells whether it is the user of this program; where the system does not tell, folder and token decide. */
    static boolean isThisUser(SocketChannel channel) throws IOException {
        if (!channel.supportedOptions().contains(ExtendedSocketOptions.SO_PEERCRED)) {
            return true;
        }
        UnixDomainPrincipal peer = channel.getOption(ExtendedSocketOptions.SO_PEERCRED);
        return peer.user().getName().equals(DoorFolder.user());
    }
}
