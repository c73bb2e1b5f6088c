package padwright.paper.pdf;

import java.util.Map;
import java.util.TreeMap;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * The logical structure of a document, in the order in which its pages are drawn (tagged PDF, ISO 32000-1, 14.8): what
 * is marked on a page belongs to a paragraph, a heading or a figure.
 */
final class PdfTags {

	private final PDStructureTreeRoot root = new PDStructureTreeRoot();
	private final PDStructureElement whole = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
	private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
	private PDPage page;
	private COSArray ownersOnPage;

	PdfTags(PDDocument document) {
		root.appendKid(whole);
		document.getDocumentCatalog().setStructureTreeRoot(root);
		PDMarkInfo marked = new PDMarkInfo();
		marked.setMarked(true);
		document.getDocumentCatalog().setMarkInfo(marked);
	}

	/** All that is marked from now on is on this page. */
	void begin(PDPage next) {
		page = next;
		ownersOnPage = new COSArray();
		page.setStructParents(parents.size());
		page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
		parents.put(page.getStructParents(), new PDParentTreeValue(ownersOnPage));
	}

	/** A new element of the document, as in {@code P}. */
	PDStructureElement element(COSName type) {
		PDStructureElement element = new PDStructureElement(type.getName(), whole);
		element.setPage(page);
		whole.appendKid(element);
		return element;
	}

	/** The number under which a piece of content is marked as part of {@code element}. */
	int mark(PDStructureElement element) {
		int number = ownersOnPage.size();
		PDMarkedContentReference reference = new PDMarkedContentReference();
		reference.setPage(page);
		reference.setMCID(number);
		element.appendKid(reference);
		ownersOnPage.add(element);
		return number;
	}

	/** Once all pages are drawn. */
	void finish() {
		PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
		tree.setNumbers(parents);
		root.setParentTree(tree);
		root.setParentTreeNextKey(parents.size());
	}
}
