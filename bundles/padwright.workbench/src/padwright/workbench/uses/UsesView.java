package padwright.workbench.uses;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.lsp4j.Location;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

import padwright.workbench.Messages;
import padwright.workbench.editor.Places;

/** Where a name is used, in all documents of its shop. */
public final class UsesView extends ViewPart {

	public static final String ID = "padwright.workbench.uses";

	private TableViewer table;

	@Override
	public void createPartControl(Composite parent) {
		Composite whole = new Composite(parent, SWT.NONE);
		TableColumnLayout layout = new TableColumnLayout();
		whole.setLayout(layout);
		table = new TableViewer(whole, SWT.FULL_SELECTION | SWT.V_SCROLL);
		table.setContentProvider(ArrayContentProvider.getInstance());
		column("uses.where", 1, layout, use -> use.where());
		column("uses.line", 3, layout, use -> use.line());
		table.getTable().setHeaderVisible(true);
		table.addOpenListener(opened -> {
			if (((IStructuredSelection) opened.getSelection()).getFirstElement() instanceof Use use) {
				Places.open(use.place());
			}
		});
	}

	private void column(String heading, int weight, TableColumnLayout layout,
			Function<Use, String> text) {
		TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
		column.getColumn().setText(Messages.get(heading));
		layout.setColumnData(column.getColumn(), new ColumnWeightData(weight));
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(use -> text.apply((Use) use)));
	}

	/** Lists places in documents. */
	public void show(List<Location> places) {
		setContentDescription(Messages.get("uses.title", places.size()));
		table.setInput(places.stream().map(Use::of).toList());
	}

	/** What is shown. */
	public List<Use> uses() {
		return table.getInput() == null ? List.of() : ((List<?>) table.getInput()).stream().map(Use.class::cast).toList();
	}

	@Override
	public void setFocus() {
		table.getControl().setFocus();
	}
}
