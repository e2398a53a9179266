package afterlength.workshop.paper;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.List;
import java.util.TreeSet;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Puts head, style sheet and running foot around the body of a paper, after making sure that it can be set. */
final class PaperPage {
    private static final String STAYS = "page-break-after: avoid; -fs-page-break-min-height: 30mm";

    private final PaperDocument paper;
    private final Document page;

    private PaperPage(PaperDocument paper) {
        this.paper = paper;
        this.page = parse(paper);
    }

    static Document of(PaperDocument paper) {
        PaperPage page = new PaperPage(paper);
        page.requirePictures();
        page.describeDrawings();
        page.keepTablesWithTheirWords();
        page.wrap();
        return page.page;
    }

    private void requirePictures() {
        NodeList pictures = page.getElementsByTagName("img");
        for (int i = 0; i < pictures.getLength(); i++) {
            String name = ((Element) pictures.item(i)).getAttribute("src");
            if (!paper.images().containsKey(name)) {
                throw new IllegalArgumentException("the paper '" + paper.title() + "' shows the picture '" + name
                        + "', which was not given with it; given were "
                        + new TreeSet<>(paper.images().keySet()) + ". Pictures are given by name and never fetched");
            }
        }
    }

    /** Gives a drawing's own description to whoever has the paper read aloud; its words are only lines on the page. */
    private void describeDrawings() {
        NodeList drawings = page.getElementsByTagName("svg");
        for (int i = 0; i < drawings.getLength(); i++) {
            Element drawing = (Element) drawings.item(i);
            NodeList descriptions = drawing.getElementsByTagName("desc");
            String description =
                    descriptions.getLength() == 0 ? "" : descriptions.item(0).getTextContent();
            drawing.setAttribute("alt", drawing.getAttribute("aria-label") + ". " + description);
        }
    }

    /**
     * What stands before a table stays on its page, with room for a row. That is good to read, and it keeps rows whole: the library breaks a row when a
     * table begins so low that only its head would fit and nothing before it asks to stay with it.
     */
    private void keepTablesWithTheirWords() {
        NodeList tables = page.getElementsByTagName("table");
        for (int i = 0; i < tables.getLength(); i++) {
            Element table = (Element) tables.item(i);
            Node before = table.getPreviousSibling();
            while (before != null && !(before instanceof Element)) {
                before = before.getPreviousSibling();
            }
            boolean words = before instanceof Element && before.getNodeName().matches("p|h2|h3");
            Element kept = words ? (Element) before : element("div", "", "");
            kept.setAttribute("style", STAYS);
            if (!words) {
                table.getParentNode().insertBefore(kept, table);
            }
        }
    }

    private void wrap() {
        Element body = page.getDocumentElement();
        Element html = page.createElement("html");
        html.setAttribute("lang", paper.language());
        page.replaceChild(html, body);
        html.appendChild(head());
        html.appendChild(body);
        body.insertBefore(title(), body.getFirstChild());
        List<Integer> lost = Lettering.listLost(paper.everyWord());
        if (!lost.isEmpty()) {
            body.appendChild(element("p", "small faint", LostSigns.words(lost)));
        }
    }

    private Element head() {
        Element head = page.createElement("head");
        head.appendChild(
                element("title", "", paper.title() + " · " + paper.running().instrument()));
        Element subject = element("meta", "", "");
        subject.setAttribute("name", "subject");
        subject.setAttribute("content", paper.title() + ", " + paper.running().instrument());
        head.appendChild(subject);
        head.appendChild(element("style", "", PaperStyle.sheet(paper.size(), paper.running())));
        return head;
    }

    private Element title() {
        Element title = element("div", "title", "");
        title.appendChild(element("p", "date", paper.running().date()));
        title.appendChild(element("h1", "", paper.title()));
        title.appendChild(element("p", "instrument", paper.running().instrument()));
        return title;
    }

    private Element element(String name, String cssClass, String words) {
        Element element = page.createElement(name);
        if (!cssClass.isEmpty()) {
            element.setAttribute("class", cssClass);
        }
        element.setTextContent(Normalizer.normalize(words, Normalizer.Form.NFC));
        return element;
    }

    private static Document parse(PaperDocument paper) {
        String body = "<body>\n" + Normalizer.normalize(paper.body(), Normalizer.Form.NFC) + "\n</body>";
        try {
            return parser().parse(new InputSource(new StringReader(body)));
        } catch (SAXParseException notWellFormed) {
            throw new IllegalArgumentException(
                    "the body of '" + paper.title() + "' is not well-formed at line "
                            + (notWellFormed.getLineNumber() - 1) + ", column " + notWellFormed.getColumnNumber() + ": "
                            + notWellFormed.getMessage()
                            + " Close every element (<br/>), quote every attribute and write "
                            + "&#160; for a hard space",
                    notWellFormed);
        } catch (SAXException broken) {
            throw new IllegalArgumentException("the body of '" + paper.title() + "' cannot be read", broken);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static DocumentBuilder parser() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder parser = factory.newDocumentBuilder();
            parser.setErrorHandler(new Strict());
            return parser;
        } catch (ParserConfigurationException broken) {
            throw new IllegalStateException("this Java has no XML parser that can be kept from outside files", broken);
        }
    }

    /** Throws at the first fault and prints nothing. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException fault) {}

        @Override
        public void error(SAXParseException fault) throws SAXException {
            throw fault;
        }

        @Override
        public void fatalError(SAXParseException fault) throws SAXException {
            throw fault;
        }
    }
}
