package padwright.workbench.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.workbench.Driver;

/** Cutting sheets are laid under film, so that what is printed has to have its true size. */
class PrintTest {

	/** Dots of a tenth of a millimetre. */
	private static final int DPI = 254;

	@TempDir
	private Path folder;

	@Test
	void aDiscIsPrintedInItsTrueSizeAtItsPlaceOnEveryPage() throws Exception {
		Path file = folder.resolve("printed.pdf");
		Scene disc = new Scene("disc", 210, 297, List.of(new Drawn(new Circle(60, 100, 10), Style.filled(Ink.BLACK))));
		Display.getDefault().syncExec(() -> PagePrinter.print(toFile(file), new Pages("disc", "Disc", List.of(disc, disc))));
		Driver.waitFor("the print", () -> isWhole(file));
		try (PDDocument printed = Loader.loadPDF(file.toFile())) {
			assertEquals(2, printed.getNumberOfPages());
			for (int page = 0; page < 2; page++) {
				BufferedImage picture = new PDFRenderer(printed).renderImageWithDPI(page, DPI);
				assertEquals(500, firstInkAcross(picture, 1000), 1);
				assertEquals(900, firstInkDown(picture, 600), 1);
				assertEquals(Math.PI * 100 * 100, inked(picture), 400);
			}
		}
	}

	/** The toolkit's own printer, that writes a file; GTK has it wherever there is a display. */
	private static PrinterData toFile(Path file) {
		PrinterData printer = new PrinterData("GtkPrintBackendFile", "Print to File");
		printer.printToFile = true;
		printer.fileName = file.toString();
		return printer;
	}

	private static boolean isWhole(Path file) {
		try (PDDocument printed = Loader.loadPDF(file.toFile())) {
			return printed.getNumberOfPages() > 0;
		} catch (IOException notYet) {
			return false;
		}
	}

	private static boolean isInk(BufferedImage picture, int x, int y) {
		return (picture.getRGB(x, y) & 0xFF) < 0x80;
	}

	private static int firstInkAcross(BufferedImage picture, int y) {
		int x = 0;
		while (!isInk(picture, x, y)) {
			x++;
		}
		return x;
	}

	private static int firstInkDown(BufferedImage picture, int x) {
		int y = 0;
		while (!isInk(picture, x, y)) {
			y++;
		}
		return y;
	}

	private static int inked(BufferedImage picture) {
		int count = 0;
		for (int y = 0; y < picture.getHeight(); y++) {
			for (int x = 0; x < picture.getWidth(); x++) {
				count += isInk(picture, x, y) ? 1 : 0;
			}
		}
		return count;
	}
}
