package afterlength.workshop.desk;

import io.javalin.config.RoutesConfig;

/** A stage's pages: hangs its addresses on the server. */
public interface Room {
    void open(RoutesConfig routes);
}
