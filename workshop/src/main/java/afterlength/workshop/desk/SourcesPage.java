package afterlength.workshop.desk;

import java.util.List;

record SourcesPage(Frame frame, List<SourceText.Block> blocks) {}
