package padwright.workbench.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import padwright.workbench.board.BoardView;
import padwright.workbench.findings.FindingsView;
import padwright.workbench.inspector.InspectorView;
import padwright.workbench.reports.ReportView;
import padwright.workbench.shops.ShopView;
import padwright.workbench.tour.TourView;
import padwright.workbench.views.CupSectionView;
import padwright.workbench.views.FingeringView;
import padwright.workbench.views.HoleSectionView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.LayoutView;
import padwright.workbench.views.PhotosView;
import padwright.workbench.views.RegulationView;
import padwright.workbench.views.RimClockView;
import padwright.workbench.views.SoundView;

/** The layout that the window starts with: files left, text in the middle, drawings right, tables below. */
public final class BenchPerspective implements IPerspectiveFactory {

	public static final String ID = "padwright.workbench.bench";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		String text = layout.getEditorArea();
		IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.18f, text);
		left.addView(ShopView.ID);
		IFolderLayout leftBelow = layout.createFolder("leftBelow", IPageLayout.BOTTOM, 0.5f, "left");
		leftBelow.addView(IPageLayout.ID_OUTLINE);
		leftBelow.addPlaceholder(TourView.ID);
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.52f, text);
		right.addView(KeyMapView.ID);
		right.addView(LayoutView.ID);
		right.addView(FingeringView.ID);
		right.addView(SoundView.ID);
		IFolderLayout rightBelow = layout.createFolder("rightBelow", IPageLayout.BOTTOM, 0.4f, "right");
		rightBelow.addView(RimClockView.ID);
		rightBelow.addView(CupSectionView.ID);
		rightBelow.addView(HoleSectionView.ID);
		rightBelow.addView(InspectorView.ID);
		rightBelow.addPlaceholder(PhotosView.ID);
		IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.66f, text);
		below.addView(KeyTableView.ID);
		below.addView(RegulationView.ID);
		below.addView(FindingsView.ID);
		below.addView(BoardView.ID);
		below.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		below.addPlaceholder(ReportView.ID + ":*");
	}
}
