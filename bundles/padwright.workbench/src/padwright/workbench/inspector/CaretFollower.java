package padwright.workbench.inspector;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.edit.ElementFields;
import padwright.language.edit.InheritedElement;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.SystemOnBench;
import padwright.workbench.bench.Workpiece;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Answers;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;

/**
 * Follows the element at the caret of the active editor: in plans as what is on the bench changes, in all documents as
 * the caret moves and as the server reads the text anew. To be used in the UI thread.
 */
final class CaretFollower implements IPartListener2, ISelectionListener {

	/** As in {@code change joint head}. */
	private static final int WORDS = 3;

	private final IWorkbenchWindow window;
	private final Consumer<Optional<ElementHere>> onElement;
	private final Consumer<Set<String>> onBuild = this::built;
	private final Consumer<OnBench> onBench = shown -> tell();
	private final Job reading = Job.createSystem("Inspector", (ICoreRunnable) monitor -> read());
	private Optional<PlanEditor> editor = Optional.empty();
	private Optional<XtextResource> model = Optional.empty();
	private volatile Optional<String> uri = Optional.empty();
	private Optional<String> chosen = Optional.empty();
	private String caretThen = "";

	/** @param onElement told of each element, and of nothing where there is none */
	CaretFollower(IWorkbenchWindow window, Consumer<Optional<ElementHere>> onElement) {
		this.window = window;
		this.onElement = onElement;
	}

	void start() {
		window.getPartService().addPartListener(this);
		window.getSelectionService().addPostSelectionListener(this);
		LanguageSession.get().builds().add(onBuild);
		LanguageSession.get().server().thenAccept(running -> reading.schedule());
		if (window.getActivePage() != null && window.getActivePage().getActiveEditor() instanceof PlanEditor open) {
			opened(open);
		}
		Bench.of(window).follow(onBench);
	}

	void stop() {
		window.getPartService().removePartListener(this);
		window.getSelectionService().removePostSelectionListener(this);
		LanguageSession.get().builds().remove(onBuild);
		Bench.of(window).unfollow(onBench);
		reading.cancel();
	}

	private void opened(IWorkbenchPart part) {
		if (part instanceof PlanEditor anew && editor.orElse(null) != anew) {
			show(Optional.of(anew));
		}
	}

	private void show(Optional<PlanEditor> anew) {
		editor = anew;
		model = Optional.empty();
		uri = text().flatMap(Documents::uri);
		tell();
		reading.schedule();
	}

	private Optional<IDocument> text() {
		return editor.flatMap(open -> Optional.ofNullable(open.getDocumentProvider())
				.map(provider -> provider.getDocument(open.getEditorInput())));
	}

	private void built(Set<String> uris) {
		if (uri.filter(uris::contains).isPresent()) {
			reading.schedule();
		}
	}

	private void read() {
		Optional<String> read = uri;
		Optional<XtextResource> found = read.flatMap(
				open -> LanguageSession.get().running().flatMap(server -> Answers.await(() -> server.snapshot(open))));
		Display display = window.getWorkbench().getDisplay();
		found.filter(document -> !display.isDisposed()).ifPresent(document -> display.asyncExec(() -> {
			if (uri.equals(read)) {
				model = found;
				tell();
			}
		}));
	}

	private void tell() {
		if (editor.isEmpty()) {
			onElement.accept(Optional.empty());
			return;
		}
		model.filter(this::isCurrent).ifPresent(document -> onElement.accept(inherited(document)
				.map(chosen -> ElementHere.of(chosen, document, text().orElseThrow()))
				.or(() -> element(document).map(element -> here(element, document)))));
	}

	/** A change is shown as what it is a change of. */
	private ElementHere here(EObject element, XtextResource document) {
		return Optional.of(element).filter(Change.class::isInstance)
				.flatMap(change -> InheritedElement.changedBy((Change) change))
				.map(changed -> ElementHere.of(changed, document, text().orElseThrow()))
				.orElseGet(() -> new ElementHere(element, document, text().orElseThrow(), Optional.empty()));
	}

	/** What was chosen in a drawing and is inherited, until the caret goes to something else. */
	private Optional<InheritedElement> inherited(XtextResource document) {
		OnBench shown = Bench.of(window).shown();
		Optional<KeySystem> system = shown.work().filter(SystemOnBench.class::isInstance)
				.filter(work -> work.text().equals(document.getParseResult().getRootNode().getText()))
				.flatMap(Workpiece::keySystem);
		String here = element(document).map(CaretFollower::beginning).orElse("");
		Optional<String> part = shown.part().map(Titled::getName);
		if (!part.equals(chosen)) {
			chosen = part;
			caretThen = here;
		}
		return system.filter(heir -> here.equals(caretThen)).flatMap(heir -> shown.part()
				.filter(inherited -> inherited.eContainer() != heir).map(inherited -> new InheritedElement(heir, inherited)));
	}

	/** What a statement is known by, whatever is edited in it or before it. */
	private static String beginning(EObject element) {
		String text = NodeModelUtils.getTokenText(NodeModelUtils.findActualNodeFor(element));
		return Stream.of(text.split("\\s+")).limit(WORDS).collect(Collectors.joining(" "));
	}

	private Optional<EObject> element(XtextResource document) {
		ISelection selection = editor.orElseThrow().getSelectionProvider().getSelection();
		return selection instanceof ITextSelection caret
				? ElementFields.elementAt(document.getParseResult().getRootNode(), caret.getOffset()) : Optional.empty();
	}

	private boolean isCurrent(XtextResource document) {
		return text().map(IDocument::get).filter(document.getParseResult().getRootNode().getText()::equals).isPresent();
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		if (part == editor.orElse(null)) {
			tell();
		}
	}

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		opened(part.getPart(false));
	}

	@Override
	public void partBroughtToTop(IWorkbenchPartReference part) {
		opened(part.getPart(false));
	}

	@Override
	public void partClosed(IWorkbenchPartReference part) {
		if (editor.isPresent() && part.getPart(false) == editor.get()) {
			show(Optional.empty());
		}
	}
}
