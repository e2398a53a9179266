package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;

/** What if the shop had more, or a step were left out. */
record WishPage(Frame frame, WishPart part) {}
