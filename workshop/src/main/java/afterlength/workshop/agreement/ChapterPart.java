package afterlength.workshop.agreement;

record ChapterPart(Proposal proposal) {}
