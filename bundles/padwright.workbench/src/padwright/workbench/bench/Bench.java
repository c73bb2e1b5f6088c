package padwright.workbench.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;
import java.util.function.Consumer;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveSystem;
import padwright.workbench.Messages;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.TextEdits;

/**
 * What is being worked on in one window: the plan or key system in its active editor and the key at the caret. All views are fed from
 * here, and write through here into the text. To be used in the UI thread.
 */
public final class Bench {

	private static final Map<IWorkbenchWindow, Bench> BENCHES = new WeakHashMap<>();

	private final Set<PlanEditor> followed = Collections.newSetFromMap(new WeakHashMap<>());
	private final List<Consumer<OnBench>> listeners = new ArrayList<>();
	private final Consumer<Set<String>> onBuild = this::built;
	private final Hands hands = new Hands();
	private final Display display;
	private final Reading reading = new Reading(this::read);
	private Optional<PlanEditor> editor = Optional.empty();
	private volatile Optional<String> uri = Optional.empty();
	private OnBench shown = OnBench.NOTHING;

	private Bench(IWorkbenchWindow window) {
		display = window.getShell().getDisplay();
		window.getPartService().addPartListener(new EditorFollower(this::opened, this::closed));
		LanguageSession.get().builds().add(onBuild);
		LanguageSession.get().server().thenAccept(running -> display.asyncExec(this::refresh));
		if (window.getActivePage() != null && window.getActivePage().getActiveEditor() instanceof PlanEditor open) {
			opened(open);
		}
	}

	/** The bench of a window. */
	public static Bench of(IWorkbenchWindow window) {
		return BENCHES.computeIfAbsent(window, Bench::new);
	}

	/** Has everything shown anew, in every window; from any thread. */
	public static void refreshAll() {
		Display.getDefault().asyncExec(() -> List.copyOf(BENCHES.values()).forEach(Bench::refresh));
	}

	/** Tells {@code listener} at once, and whenever something else is on the bench. */
	public void follow(Consumer<OnBench> listener) {
		listeners.add(listener);
		listener.accept(shown);
	}

	public void unfollow(Consumer<OnBench> listener) {
		listeners.remove(listener);
	}

	/** What is being dragged and pressed in its drawings. */
	public Hands hands() {
		return hands;
	}

	/** What is on the bench now. */
	public OnBench shown() {
		return shown;
	}

	private void opened(IWorkbenchPart part) {
		if (part instanceof PlanEditor plan && editor.orElse(null) != plan) {
			follow(plan);
			editor = Optional.of(plan);
			uri = document().flatMap(Documents::uri);
			refresh();
		}
	}

	/** The caret also moves while another part has the focus, such as when a finding is chosen. */
	private void follow(PlanEditor plan) {
		if (followed.add(plan) && plan.getSelectionProvider() instanceof IPostSelectionProvider provider) {
			provider.addPostSelectionChangedListener(moved -> {
				if (plan == editor.orElse(null) && moved.getSelection() instanceof ITextSelection caret) {
					caretAt(caret.getOffset());
				}
			});
		}
	}

	private void closed(IWorkbenchPart part) {
		if (part == editor.orElse(null)) {
			editor = Optional.empty();
			uri = Optional.empty();
			show(OnBench.NOTHING);
		}
	}

	private Optional<IDocument> document() {
		return editor.map(ITextEditor::getDocumentProvider)
				.map(provider -> provider.getDocument(editor.get().getEditorInput()));
	}

	private int caret() {
		return editor.map(open -> open.getSelectionProvider().getSelection())
				.filter(ITextSelection.class::isInstance).map(selection -> ((ITextSelection) selection).getOffset())
				.orElse(0);
	}

	private void built(Set<String> uris) {
		if (uri.filter(uris::contains).isPresent()) {
			display.asyncExec(this::refresh);
		}
	}

	private void refresh() {
		uri.ifPresent(open -> reading.start(open, caret()));
	}

	/** A text was read; told in a background thread. */
	private void read(String ofUri, Optional<Workpiece> work) {
		display.asyncExec(() -> {
			if (uri.equals(Optional.of(ofUri))) {
				show(new OnBench(work, work.flatMap(open -> open.keyAt(caret())).or(shown::key), partOf(work)));
			}
		});
	}

	/** What was chosen in a drawing, as a text that was read anew has it. */
	private Optional<Titled> partOf(Optional<Workpiece> work) {
		return shown.part().flatMap(chosen -> work.flatMap(Workpiece::keySystem).flatMap(
				system -> EffectiveSystem.lineage(system).stream().flatMap(each -> each.eContents().stream())
						.filter(chosen.eClass()::isInstance).map(Titled.class::cast)
						.filter(each -> chosen.getName().equals(each.getName())).reduce((outer, inner) -> inner)));
	}

	private void caretAt(int offset) {
		Optional<String> key = shown.work().filter(this::isCurrent).flatMap(work -> work.keyAt(offset));
		if (key.isPresent() && !key.equals(shown.key())) {
			show(new OnBench(shown.work(), key));
		}
		boolean isElsewhere = shown.work().filter(this::isCurrent).filter(work -> !work.isAt(offset)).isPresent();
		if (isElsewhere) {
			refresh();
		}
	}

	private boolean isCurrent(Workpiece work) {
		return document().map(IDocument::get).filter(work.text()::equals).isPresent();
	}

	private void show(OnBench next) {
		shown = next;
		List.copyOf(listeners).forEach(listener -> listener.accept(next));
	}

	/** Chooses a key and puts the caret into its row, if it has one. */
	public void choose(String key) {
		show(new OnBench(shown.work(), Optional.of(key)));
		shown.work().filter(this::isCurrent).flatMap(work -> work.offset(key))
				.ifPresent(offset -> editor.ifPresent(open -> open.selectAndReveal(offset, 0)));
	}

	/** Puts the caret at a place of the text that is shown, if that is still the text. */
	public void reveal(int offset) {
		if (shown.work().filter(this::isCurrent).isPresent()) {
			editor.ifPresent(open -> open.selectAndReveal(offset, 0));
		}
	}

	/** Something of the system was chosen in a drawing. */
	public void choosePart(Titled part) {
		show(new OnBench(shown.work(), part instanceof Key key ? Optional.of(key.getName()) : shown.key(),
				Optional.of(part)));
	}

	/**
	 * The text of the system that is shown, while it is as it is shown. That of a plan is elsewhere: its editor is opened,
	 * and is on the bench from then on.
	 */
	public Optional<IDocument> systemText() {
		Optional<KeySystem> elsewhere = shown.plan().flatMap(Workpiece::keySystem)
				.filter(system -> !SystemText.uri(system).equals(shown.plan().get().uri()));
		Optional<IDocument> text = elsewhere.isPresent() ? elsewhere.flatMap(SystemText::open)
				: shown.work().filter(this::isCurrent).flatMap(work -> document());
		if (text.isEmpty()) {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
			refresh();
		}
		return text;
	}

	/** As {@link #write}, into the text of the system that is shown. */
	public void writeSystem(List<TextEdit> edits) {
		systemText().ifPresent(text -> TextEdits.applyOwn(edits, text));
	}

	/** The editor whose text is on the bench. */
	public Optional<PlanEditor> editor() {
		return editor;
	}

	/** Goes into the text of a key's row. */
	public void open(String key) {
		choose(key);
		editor.ifPresent(open -> open.getSite().getPage().activate(open));
	}

	/** As {@link #write}, from any thread. */
	public void writeLater(List<TextEdit> edits) {
		display.asyncExec(() -> write(edits));
	}

	/**
	 * Writes a view's edits into the text, as one step of undo; they must be made from the plan or system that is shown.
	 * False where the text is another meanwhile: it is read anew then.
	 */
	public boolean write(List<TextEdit> edits) {
		if (shown.work().filter(this::isCurrent).isEmpty()) {
			StatusLine.tell(Messages.get("bench.changedMeanwhile"), true);
			refresh();
			return false;
		}
		document().ifPresent(text -> TextEdits.applyOwn(edits, text));
		return true;
	}
}
