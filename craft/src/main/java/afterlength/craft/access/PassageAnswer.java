package afterlength.craft.access;

/** What is said to the question of a bar and a hole. */
public sealed interface PassageAnswer permits SectionPassage, PassageRefused {}
