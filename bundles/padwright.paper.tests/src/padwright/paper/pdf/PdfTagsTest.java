package padwright.paper.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.junit.jupiter.api.Test;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.card.BenchCardPages;
import padwright.paper.card.DemoCard;
import padwright.paper.page.PaperSize;

/** Tagged as ISO 32000-1, 14.7 and 14.8, asks: all content is marked, and all that is marked has its place. */
class PdfTagsTest {

	private static final Scene PAGE = new Scene("page", 100, 80, List.of(
			Text.of("Card", 10, 10, Face.BOLD, 7), Text.of("Part", 10, 20, Face.BOLD, 4.5),
			Text.of("one line", 10, 30, Face.REGULAR, 3), Text.of("and the next", 10, 33.5, Face.REGULAR, 3),
			Text.of("another place", 50, 33.5, Face.REGULAR, 3), line(),
			Group.named("clock", "A clock", List.of(line(), Text.of("12", 20, 60, Face.REGULAR, 3),
					Group.named("inner", "never told twice", List.of(line()))))));

	private static Drawn line() {
		return new Drawn(new Line(10, 40, 20, 40), Style.stroked(Ink.BLACK, 0.2));
	}

	@Test
	void textIsInHeadingsAndParagraphsAndADrawingWithWordsIsAFigure() throws IOException {
		try (PDDocument document = Loader.loadPDF(PdfText.write("Card", List.of(PAGE, PAGE)))) {
			assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
			List<String> types = new ArrayList<>();
			for (PDStructureElement element : elements(document)) {
				types.add(element.getStructureType());
			}
			List<String> onePage = List.of("H1", "H2", "P", "P", "Figure");
			List<String> twoPages = new ArrayList<>(onePage);
			twoPages.addAll(onePage);
			assertEquals(twoPages, types);
			assertEquals("A clock", elements(document).get(4).getAlternateDescription());
			assertEquals(2, elements(document).get(2).getKids().size(), "two lines, one paragraph");
		}
	}

	@Test
	void allContentIsMarkedAndAllMarksHaveTheirPlace() throws IOException {
		byte[] pdf = PdfText.write("Card", new BenchCardPages(DemoCard.boehmFlute(), PaperSize.A4).pages());
		try (PDDocument document = Loader.loadPDF(pdf)) {
			assertTrue(elements(document).stream().filter(each -> each.getStructureType().equals("Figure"))
					.allMatch(each -> each.getAlternateDescription().startsWith("Clock of ")));
			var parents = document.getDocumentCatalog().getStructureTreeRoot().getParentTree().getNumbers();
			assertEquals(document.getNumberOfPages(), parents.size());
			for (PDPage page : document.getPages()) {
				COSArray owners = (COSArray) ((PDParentTreeValue) parents.get(page.getStructParents())).getCOSObject();
				assertEquals(marks(page), owners.size());
				for (COSBase owner : owners) {
					COSBase element = owner instanceof COSObject reference ? reference.getObject() : owner;
					assertNotNull(((COSDictionary) element).getDictionaryObject(COSName.P));
				}
			}
		}
	}

	private static List<PDStructureElement> elements(PDDocument document) {
		PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
		PDStructureElement whole = (PDStructureElement) root.getKids().get(0);
		assertEquals("Document", whole.getStructureType());
		return whole.getKids().stream().map(PDStructureElement.class::cast).toList();
	}

	/** How many numbered marks there are, each number once; fails for a glyph or a line outside of marks. */
	private static int marks(PDPage page) throws IOException {
		int depth = 0;
		int numbered = 0;
		List<Object> operands = new ArrayList<>();
		for (Object token : new PDFStreamParser(page).parse()) {
			if (!(token instanceof Operator)) {
				operands.add(token);
				continue;
			}
			String operator = ((Operator) token).getName();
			switch (operator) {
			case "BDC" -> {
				depth++;
				assertEquals(numbered++, ((COSDictionary) operands.get(1)).getInt(COSName.MCID));
			}
			case "BMC" -> depth++;
			case "EMC" -> depth--;
			case "Tj", "TJ", "S", "f*" -> assertEquals(1, depth, operator + " outside of what is marked");
			default -> { }
			}
			operands.clear();
		}
		assertEquals(0, depth);
		return numbered;
	}
}
