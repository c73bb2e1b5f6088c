package padwright.workbench.compare;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.eclipse.compare.CompareUI;
import org.eclipse.compare.ISharedDocumentAdapter;
import org.eclipse.compare.IStreamContentAccessor;
import org.eclipse.compare.structuremergeviewer.DocumentRangeNode;
import org.eclipse.compare.structuremergeviewer.IStructureComparator;
import org.eclipse.compare.structuremergeviewer.StructureCreator;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.IDocument;

import padwright.language.merge.Stretch;
import padwright.workbench.Messages;
import padwright.workbench.session.LanguageSession;

/** Lets two copies of a document be compared by their elements and keys, wherever these stand. */
public final class DocumentStructure extends StructureCreator {

	@Override
	public String getName() {
		return Messages.get("compare.structure");
	}

	@Override
	protected IStructureComparator createStructureComparator(Object element, IDocument document,
			ISharedDocumentAdapter adapter, IProgressMonitor monitor) {
		DocumentRangeNode root = new StretchNode(null, "", document, 0, document.getLength());
		LanguageSession.get().running().ifPresent(server -> add(root,
				Stretch.of(server.parse(document.get()).getRootNode()), document));
		return root;
	}

	private static void add(DocumentRangeNode parent, List<Stretch> parts, IDocument document) {
		for (Stretch part : parts) {
			StretchNode node = new StretchNode(parent, part.id(), document, part.start(), part.end() - part.start());
			parent.addChild(node);
			add(node, part.parts(), document);
		}
	}

	@Override
	public String getContents(Object node, boolean ignoreBlanks) {
		if (!(node instanceof IStreamContentAccessor accessor)) {
			return null;
		}
		try (InputStream content = accessor.getContents()) {
			String text = new String(content.readAllBytes(), StandardCharsets.UTF_8);
			return ignoreBlanks ? text.replaceAll("\\s+", " ") : text;
		} catch (CoreException | IOException unreadable) {
			CompareUI.getPlugin().getLog().log(Status.warning(String.valueOf(unreadable.getMessage()), unreadable));
			return null;
		}
	}
}
