package afterlength.workshop.desk;

import io.javalin.http.Context;

/** One way into the shop: by which names it is called, and who may come in through it. */
public interface Entrance {
    /** Whether a request that names this host was meant for us. */
    boolean answersTo(String host);

    /** {@code http} or {@code https}. */
    String scheme();

    /** Whether this visitor may see and change what is behind the door; who may not was answered already. */
    boolean admits(Context context);
}
