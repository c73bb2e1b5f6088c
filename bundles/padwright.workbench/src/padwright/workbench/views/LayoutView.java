package padwright.workbench.views;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.SystemEdits;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.views.Palette;
import padwright.views.canvas.LayoutControl;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.SystemOnBench;
import padwright.workbench.commands.RenameHandler;
import padwright.workbench.session.Positions;
import padwright.workbench.session.StatusLine;

/** The layout of the system in the active editor, to be drawn in. While its text has a fault the last good one stays. */
public final class LayoutView extends BenchView<LayoutControl> {

	public static final String ID = "padwright.workbench.layout";

	private Layout lastGood = Layout.empty();
	private Optional<String> lastUri = Optional.empty();
	private Optional<String> lastKey = Optional.empty();

	@Override
	protected LayoutControl create(Composite parent, Palette palette, Bench bench) {
		LayoutControl layout = new LayoutControl(parent, palette);
		layout.onEdit(bench::write);
		layout.onSelect(this::reveal);
		layout.onOpen(item -> toText(List.of(item)));
		layout.onRename(this::rename);
		layout.onShown(bench.hands()::draw);
		LayoutMenu menu = new LayoutMenu(layout, this::toText);
		menu.onCanvas();
		menu.onKeys(getViewSite().getActionBars());
		return layout;
	}

	@Override
	protected void show(LayoutControl layout, OnBench onBench) {
		Optional<SystemOnBench> system = onBench.work().filter(SystemOnBench.class::isInstance)
				.map(SystemOnBench.class::cast);
		Layout read = system.map(SystemOnBench::layout).orElseGet(Layout::empty);
		Optional<String> uri = system.map(SystemOnBench::uri);
		boolean isSameText = uri.isPresent() && uri.equals(lastUri);
		Layout drawn = isSameText && read.fault().isPresent() && lastGood.system().isPresent()
				? lastGood.with(read.fault().get()) : read;
		if (read.fault().isEmpty() || !isSameText) {
			lastGood = read;
		}
		lastUri = uri;
		layout.show(drawn);
		follow(layout, onBench.key());
	}

	/** Chooses the key that the caret went to. */
	private void follow(LayoutControl layout, Optional<String> key) {
		if (!key.equals(lastKey)) {
			lastKey = key;
			key.map(name -> "key:" + name).filter(id -> layout.editing().layout().item(id).isPresent())
					.filter(id -> !layout.editing().selected().contains(id))
					.ifPresent(id -> layout.editing().select(Set.of(id)));
		}
	}

	/** Puts the caret to what is chosen, where this text says something of it. */
	private void reveal(List<LayoutItem> items) {
		if (items.size() == 1) {
			lastKey = items.get(0).isKey() ? Optional.of(items.get(0).thing().getName()) : lastKey;
			offset(items.get(0)).ifPresent(bench()::reveal);
			bench().choosePart(items.get(0).thing());
		}
	}

	private void toText(List<LayoutItem> items) {
		reveal(items);
		bench().editor().ifPresent(editor -> editor.getSite().getPage().activate(editor));
	}

	private Optional<Integer> offset(LayoutItem item) {
		Optional<KeySystem> system = control().editing().layout().system();
		return system.flatMap(drawn -> new SystemEdits(drawn).written(item.thing()))
				.map(statement -> NodeModelUtils.findActualNodeFor(statement).getOffset());
	}

	private void rename(LayoutItem item, String name) {
		Optional<IDocument> text = bench().currentText();
		boolean isOwn = control().editing().layout().system().filter(item.thing().eContainer()::equals).isPresent();
		if (!isOwn) {
			StatusLine.tell(Messages.get("layout.rename.inherited", item.label()), true);
			return;
		}
		List<INode> names = NodeModelUtils.findNodesForFeature(item.thing(), KeySystemPackage.Literals.TITLED__NAME);
		text.ifPresent(open -> {
			if (RenameHandler.rename(open, Positions.position(open, names.get(0).getOffset()), item.thing().getName(),
					name)) {
				control().editing().await(item, name);
			}
		});
	}

	@Override
	protected void setPalette(LayoutControl layout, Palette palette) {
		layout.setPalette(palette);
	}
}
