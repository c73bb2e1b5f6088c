package padwright.workbench.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;

import padwright.language.merge.Stretch;
import padwright.workbench.Messages;
import padwright.workbench.session.Documents;
import padwright.workbench.session.Finding;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.WorkspaceEdits;

/** Sorts the findings of a document by instrument and key. */
final class FoundPlaces {

	private FoundPlaces() {
	}

	/** What is to be put right in a file; not for the window's thread, since the text is read. */
	static FoundIn of(IFile file) {
		try {
			List<Found> all = Arrays.stream(file.findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO)).map(Found::of)
					.sorted(Comparator.comparingInt(Found::line).thenComparing(Found::text)).toList();
			return all.isEmpty() ? new FoundIn("", List.of(), List.of())
					: of(file.getProjectRelativePath().removeFirstSegments(1).toString(), all, stretches(file));
		} catch (CoreException gone) {
			return new FoundIn("", List.of(), List.of());
		}
	}

	private static List<Stretch> stretches(IFile file) {
		IDocument text = Documents.open(file).orElseGet(() -> WorkspaceEdits.onDisk(file));
		return LanguageSession.get().running().map(server -> Stretch.of(server.parse(text.get()).getRootNode()))
				.orElse(List.of());
	}

	/** @param path of the document in its shop */
	static FoundIn of(String path, List<Found> all, List<Stretch> stretches) {
		String name = stretches.stream().map(stretch -> named(stretch.id())).findFirst()
				.map(first -> Messages.get("findings.document", first, path)).orElse(path);
		Map<String, List<Found>> parts = new LinkedHashMap<>();
		List<Found> whole = new ArrayList<>();
		List<Stretch> places = stretches.stream().flatMap(stretch -> stretch.parts().stream()).toList();
		for (Found found : all) {
			place(places, found).map(Stretch::id).filter(id -> id.contains(" ")).ifPresentOrElse(
					id -> parts.computeIfAbsent(named(id), first -> new ArrayList<>()).add(found),
					() -> whole.add(found));
		}
		return new FoundIn(name, parts.entrySet().stream()
				.map(part -> new FoundIn(part.getKey(), List.of(), part.getValue())).toList(), whole);
	}

	private static Optional<Stretch> place(List<Stretch> places, Found found) {
		int offset = found.marker().getAttribute(IMarker.CHAR_START, 0);
		return places.stream().filter(place -> place.start() <= offset && offset <= place.end()).findFirst();
	}

	/** As in {@code Key F} for {@code KeyService F}. */
	private static String named(String id) {
		int blank = id.indexOf(' ');
		String kind = blank < 0 ? id : id.substring(0, blank);
		return Messages.find("kind." + kind).orElse(kind) + (blank < 0 ? "" : id.substring(blank));
	}
}
