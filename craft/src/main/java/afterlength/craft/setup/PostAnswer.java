package afterlength.craft.setup;

/** A post to cut, or everything that stands in its way. */
public sealed interface PostAnswer permits PostCut, PostRefused {}
