package afterlength.craft.setup;

/** The answer to what was measured: a shape to cut, or the list of everything that stands in its way. */
public sealed interface BridgeAnswer permits BridgeShape, BridgeRefused {}
