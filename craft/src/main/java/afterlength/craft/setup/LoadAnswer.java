package afterlength.craft.setup;

/** What the strings do to the bridge, or why that cannot be said. */
public sealed interface LoadAnswer permits BridgeLoad, LoadRefused {}
