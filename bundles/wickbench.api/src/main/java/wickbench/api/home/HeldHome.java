package wickbench.api.home;

import java.nio.file.Path;

/**
 * Says that this program holds its home, so that no other can; a service, there for as long as that is so.
 *
 * <p>Who hears of it may answer for the home to other programs.
 *
 * @param folder the home
 */
public record HeldHome(Path folder) {}
