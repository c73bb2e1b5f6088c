package padwright.workbench.board;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.shop.ShopFolder;
import padwright.views.board.BoardCard;
import padwright.views.canvas.Board;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.editor.Places;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.OpenShops;
import padwright.workbench.themes.Themes;
import padwright.workup.next.NextSteps;

/** What is next in the whole shop: the one of the active editor, else the first that is open. It follows what is typed. */
public final class BoardView extends ViewPart {

	public static final String ID = "padwright.workbench.board";

	private final Consumer<Set<String>> onBuild = uris -> later(this::followAndRefresh);
	private final Consumer<OnBench> onBench = shown -> follow();
	private final BoardReading reading = new BoardReading(steps -> later(() -> show(steps)));
	private Board board;
	private Themes themes;
	private Optional<Path> shop = Optional.empty();
	private Optional<LocalDate> day = Optional.empty();

	@Override
	public void createPartControl(Composite parent) {
		themes = new Themes(palette -> board.setPalette(palette));
		board = new Board(parent, themes.palette());
		board.onDay(days -> tellFor(day().plusDays(days)));
		board.onOpen(this::open);
		themes.follow();
		LanguageSession.get().builds().add(onBuild);
		bench().follow(onBench);
		follow();
	}

	private Bench bench() {
		return Bench.of(getSite().getWorkbenchWindow());
	}

	private LocalDate day() {
		return day.orElseGet(LocalDate::now);
	}

	/** Tells for another day than today; for that day itself it goes on with the calendar. */
	public void tellFor(LocalDate wished) {
		day = Optional.of(wished).filter(other -> !other.equals(LocalDate.now()));
		refresh();
	}

	private void follow() {
		if (!followed().equals(shop)) {
			followAndRefresh();
		}
	}

	private void followAndRefresh() {
		shop = followed();
		refresh();
	}

	/** The shop of the active editor, or the one before while it is open. */
	private Optional<Path> followed() {
		List<Path> open = OpenShops.folders();
		return edited().map(ShopFolder::around).or(() -> shop.filter(open::contains)).or(() -> open.stream().findFirst());
	}

	private Optional<Path> edited() {
		IWorkbenchPage page = getSite().getPage();
		return Optional.ofNullable(page == null ? null : page.getActiveEditor()).filter(PlanEditor.class::isInstance)
				.map(editor -> editor.getEditorInput().getAdapter(IFile.class)).flatMap(OnDisk::path);
	}

	private void refresh() {
		shop.ifPresentOrElse(folder -> reading.start(folder, day()),
				() -> board.show(NextSteps.of(List.of(), day())));
	}

	/** What was read, unless its shop was closed since. */
	private void show(NextSteps steps) {
		shop.ifPresent(open -> board.show(steps));
	}

	private void later(Runnable work) {
		board.getDisplay().asyncExec(() -> {
			if (!board.isDisposed()) {
				work.run();
			}
		});
	}

	/** Opens the plan of a card at the line that its first step is about. */
	private void open(BoardCard card) {
		EObject element = card.steps().get(0).element();
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		if (node != null) {
			Documents.file(element.eResource().getURI().toString()).flatMap(Places::editor)
					.ifPresent(editor -> editor.selectAndReveal(node.getOffset(), 0));
		}
	}

	/** What is shown, for tests and commands. */
	public Board control() {
		return board;
	}

	@Override
	public void setFocus() {
		board.setFocus();
	}

	@Override
	public void dispose() {
		LanguageSession.get().builds().remove(onBuild);
		bench().unfollow(onBench);
		themes.unfollow();
		super.dispose();
	}
}
