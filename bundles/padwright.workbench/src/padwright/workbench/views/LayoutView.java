package padwright.workbench.views;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.SystemEdits;
import padwright.model.keysystem.KeySystem;
import padwright.views.Palette;
import padwright.views.canvas.LayoutControl;
import padwright.views.layout.Layout;
import padwright.views.layout.LayoutItem;
import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.session.Renaming;

/** The layout of the system in the active editor, or of the plan there, to be drawn in. */
public final class LayoutView extends SystemView<LayoutControl> {

	public static final String ID = "padwright.workbench.layout";

	private Optional<String> lastKey = Optional.empty();

	@Override
	protected LayoutControl create(Composite parent, Palette palette, Bench bench) {
		LayoutControl layout = new LayoutControl(parent, palette);
		layout.onEdit(bench::writeSystem);
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
	void show(LayoutControl layout, Layout drawn, OnBench onBench) {
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
			if (bench().shown().plan().isEmpty()) {
				offset(items.get(0)).ifPresent(bench()::reveal);
			}
			bench().choosePart(items.get(0).thing());
		}
	}

	/** Goes to what is chosen in the text of the system, which a plan has elsewhere. */
	private void toText(List<LayoutItem> items) {
		reveal(items);
		bench().systemText().ifPresent(text -> bench().editor().ifPresent(editor -> {
			items.stream().findFirst().flatMap(this::offset).ifPresent(offset -> editor.selectAndReveal(offset, 0));
			editor.getSite().getPage().activate(editor);
		}));
	}

	private Optional<Integer> offset(LayoutItem item) {
		Optional<KeySystem> system = control().editing().layout().system();
		return system.flatMap(drawn -> new SystemEdits(drawn).written(item.thing()))
				.map(statement -> NodeModelUtils.findActualNodeFor(statement).getOffset());
	}

	/** What is inherited has its name from another text, and is renamed wherever that is used. */
	private void rename(LayoutItem item, String name) {
		boolean isOwn = control().editing().layout().system().filter(item.thing().eContainer()::equals).isPresent();
		boolean isWanted = isOwn || MessageDialog.openConfirm(getSite().getShell(), Messages.get("layout.rename.title"),
				Messages.get("layout.rename.inherited", item.label(),
						URI.decode(item.thing().eResource().getURI().lastSegment())));
		if (isWanted && bench().systemText().isPresent() && Renaming.rename(item.thing(), name)) {
			control().editing().await(item, name);
		}
	}

	@Override
	protected void setPalette(LayoutControl layout, Palette palette) {
		layout.setPalette(palette);
	}
}
