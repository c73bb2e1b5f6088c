package padwright.workbench.papers;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;

import padwright.drawing.scene.Scene;
import padwright.views.Palette;
import padwright.views.canvas.ScenePainter;
import padwright.views.scenes.Viewport;

/** Prints pages at their true size, so that cutting sheets can be laid under film. */
final class PagePrinter {

	private static final double MM_PER_INCH = 25.4;

	private PagePrinter() {
	}

	/** Asks for a printer and prints; does nothing if the user gives up. */
	static void print(Shell shell, Pages pages) {
		PrinterData chosen = new PrintDialog(shell, SWT.SHEET).open();
		if (chosen != null) {
			print(chosen, pages);
		}
	}

	static void print(PrinterData chosen, Pages pages) {
		Printer printer = new Printer(chosen);
		try {
			if (printer.startJob(pages.title())) {
				pages.scenes().forEach(page -> print(printer, page));
				printer.endJob();
			}
		} finally {
			printer.dispose();
		}
	}

	private static void print(Printer printer, Scene page) {
		if (!printer.startPage()) {
			return;
		}
		GC gc = new GC(printer);
		try {
			ScenePainter.paint(gc, page, Palette.paper(), trueSize(printer));
		} finally {
			gc.dispose();
		}
		printer.endPage();
	}

	/** The drawing's millimetres on the printer's dots, from the corner of the paper and not of its printable part. */
	private static Viewport trueSize(Printer printer) {
		Rectangle trim = printer.computeTrim(0, 0, 0, 0);
		return new Viewport(printer.getDPI().x / MM_PER_INCH, trim.x, trim.y);
	}
}
