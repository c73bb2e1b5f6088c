package padwright.workbench.uses;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.Location;

import padwright.workbench.session.Documents;
import padwright.workbench.session.WorkspaceEdits;

/**
 * One place where a name is used.
 *
 * @param where file and line, for people
 * @param line the text of that line
 */
public record Use(Location place, String where, String line) {

	static Use of(Location place) {
		Optional<IFile> file = Documents.file(place.getUri());
		int line = place.getRange().getStart().getLine();
		String name = file.map(IFile::getName).orElse(place.getUri());
		return new Use(place, name + ":" + (line + 1), file.map(found -> text(found, line)).orElse(""));
	}

	private static String text(IFile file, int line) {
		IDocument document = Documents.open(file).orElseGet(() -> WorkspaceEdits.onDisk(file));
		try {
			IRegion region = document.getLineInformation(line);
			return document.get(region.getOffset(), region.getLength()).strip();
		} catch (BadLocationException goneMeanwhile) {
			return "";
		}
	}
}
