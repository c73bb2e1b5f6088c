package padwright.workbench.views;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

import padwright.drawing.scene.Scene;
import padwright.drawing.svg.SvgWriter;
import padwright.paper.pdf.PdfWriter;
import padwright.views.Palette;
import padwright.views.canvas.LayoutControl;
import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;

/** Saves a layout as it is seen, in the colours of paper. */
final class LayoutPictureFile {

	private static final String PDF = ".pdf";

	private LayoutPictureFile() {
	}

	/** Asks where to, and saves; the form is that of the name. */
	static void ask(LayoutControl layout) {
		FileDialog dialog = new FileDialog(layout.getShell(), SWT.SAVE);
		dialog.setText(Messages.get("layout.save"));
		dialog.setFilterExtensions(new String[] {"*.svg", "*.pdf"});
		dialog.setFileName(layout.scene(Palette.paper()).title() + ".svg");
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			save(layout.scene(Palette.paper()), Path.of(chosen));
		}
	}

	static void save(Scene scene, Path file) {
		try {
			if (file.toString().toLowerCase(Locale.ROOT).endsWith(PDF)) {
				try (var out = Files.newOutputStream(file)) {
					PdfWriter.write(out, scene.title(), List.of(scene));
				}
			} else {
				try (Writer out = Files.newBufferedWriter(file)) {
					SvgWriter.write(out, scene);
				}
			}
			StatusLine.tell(Messages.get("layout.saved", file), false);
		} catch (IOException | IllegalStateException unwritable) {
			StatusLine.tell(Messages.get("layout.unsaved", unwritable.getLocalizedMessage()), true);
		}
	}
}
