package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.views.Messages;
import padwright.views.fingering.FingeringSession;
import padwright.workbench.bench.Bench;
import padwright.workbench.controls.Named;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.findings.FindingsView;
import padwright.workbench.inspector.InspectorView;
import padwright.workbench.shops.ShopView;
import padwright.workbench.tour.TourView;
import padwright.workbench.views.CupSectionView;
import padwright.workbench.views.FingeringView;
import padwright.workbench.views.HoleSectionView;
import padwright.workbench.views.KeyMapView;
import padwright.workbench.views.KeyTableView;
import padwright.workbench.views.LayoutView;
import padwright.workbench.views.RegulationView;
import padwright.workbench.views.RimClockView;
import padwright.workbench.views.SoundView;

/** Takes a picture of the window and of every view for people to look at, in the theme and at the zoom of the run. */
class ScreensTest {

	private static final Path SCREENS = Path.of("target/screens");
	private static final String ZOOM = System.getProperty("padwright.zoom", "100");
	private static final String THEME = System.getProperty("padwright.theme", "light");
	/** A drawing or a list is more than a plain ground. */
	private static final int FEWEST_COLOURS = 8;
	private static final long LONGEST_WAIT_NS = 20_000_000_000L;

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
		Driver.ui(() -> {
			shell().setSize(1600, 1000);
			return null;
		});
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	private static Shell shell() {
		return Driver.page().getWorkbenchWindow().getShell();
	}

	@Test
	void ofEveryView() throws Exception {
		PlanEditor editor = driver.open("plans/spring-service.plan");
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the plan on the bench", () -> bench.shown().plan().isPresent());
		Driver.waitFor("findings", () -> !driver.markers("plans/student-flute.plan").isEmpty());
		Driver.ui(() -> {
			bench.choose("As");
			return null;
		});
		pictures(editor);
	}

	@Test
	void ofASystem() throws Exception {
		driver.open("systems/quarter-tone.keys");
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the system on the bench", () -> bench.shown().work().isPresent());
		settle();
		picture(Driver.ui(ScreensTest::shell), "system");
		LayoutView view = (LayoutView) Driver.view(LayoutView.ID);
		Driver.ui(() -> {
			view.control().editing().select(Set.of("key:Fs"));
			return null;
		});
		settle();
		picture(Driver.ui(ScreensTest::shell), "layout");
		SoundView sound = (SoundView) Driver.view(SoundView.ID);
		Driver.waitFor("the scale", () -> sound.control().session().notes().size() > 30);
		settle();
		picture(Driver.ui(sound::control), "sound");
		FingeringView fingering = (FingeringView) Driver.view(FingeringView.ID);
		FingeringSession session = Driver.ui(() -> fingering.control().session());
		Driver.waitFor("fingerings", () -> session.fingerings().size() > 7);
		for (int step = 0; step < 7; step++) {
			Driver.pressButton(Driver.ui(fingering::control), Messages.of("fingering.next"));
		}
		Driver.ui(() -> {
			bench.choosePart(view.control().editing().layout().item("key:Fs").orElseThrow().thing());
			return null;
		});
		view("fingering", FingeringView.ID);
		view("holeSection", HoleSectionView.ID);
		view("inspectorOfAKey", InspectorView.ID);
		Driver.ui(() -> {
			bench.choosePart(view.control().editing().layout().item("key:F").orElseThrow().thing());
			return null;
		});
		Driver.view(InspectorView.ID);
		settle();
		Windows fields = Windows.main();
		Driver.ui(() -> fields.all(Text.class).stream().filter(field -> Named.of(field).contains(" 1: ")).findFirst()
				.map(Text::setFocus));
		view("inspectorOfCouplings", InspectorView.ID);
	}

	/** On the smallest screen that is sat at: nothing that a step speaks of may be cut. */
	@Test
	void ofTheTour() throws Exception {
		driver.open("plans/first.plan");
		Bench bench = Driver.ui(() -> Bench.of(Driver.page().getWorkbenchWindow()));
		Driver.waitFor("the plan on the bench", () -> bench.shown().plan().isPresent());
		Driver.ui(() -> {
			shell().setSize(1280, 720);
			bench.choose("Fs");
			TourView.begin();
			return null;
		});
		TourView tour = Driver.ui(() -> (TourView) Driver.page().findView(TourView.ID));
		for (int step = 1; Driver.ui(() -> Driver.page().findView(TourView.ID)) == tour; step++) {
			settle();
			picture(Driver.ui(ScreensTest::shell), "tour-" + step);
			Driver.ui(() -> {
				tour.next();
				return null;
			});
		}
	}

	private static void view(String name, String id) throws Exception {
		IViewPart view = Driver.view(id);
		settle();
		picture(Driver.ui(() -> (Control) view.getSite().getService(MPart.class).getWidget()), name);
	}

	private static void pictures(PlanEditor editor) throws Exception {
		for (String id : new String[] {KeyMapView.ID, RimClockView.ID, CupSectionView.ID, KeyTableView.ID,
				RegulationView.ID, InspectorView.ID, ShopView.ID, TourView.ID, IPageLayout.ID_OUTLINE,
				FindingsView.ID}) {
			view(id.substring(id.lastIndexOf('.') + 1), id);
		}
		Driver.view(CupSectionView.ID);
		Driver.ui(() -> {
			Driver.page().activate(editor);
			return null;
		});
		settle();
		picture(Driver.ui(ScreensTest::shell), "window");
	}

	/** Whatever was asked for in the background is drawn when neither the window nor a job has more to do, or at last. */
	static void settle() throws Exception {
		long end = System.nanoTime() + LONGEST_WAIT_NS;
		for (int quiet = 0; quiet < 20 && System.nanoTime() < end;) {
			boolean busy = Driver.ui(() -> Driver.display().readAndDispatch()) || !Job.getJobManager().isIdle();
			quiet = busy ? 0 : quiet + 1;
			LockSupport.parkNanos(10_000_000);
		}
	}

	static void picture(Control control, String name) throws Exception {
		ImageData picture = Driver.ui(() -> {
			Rectangle area = Driver.display().map(control.getParent(), null, control.getBounds());
			if (control instanceof Shell shell) {
				area = shell.getBounds();
			}
			Image image = new Image(Driver.display(), Math.max(1, area.width), Math.max(1, area.height));
			GC screen = new GC(Driver.display());
			screen.copyArea(image, area.x, area.y);
			screen.dispose();
			ImageData data = image.getImageData(Driver.display().getPrimaryMonitor().getZoom());
			image.dispose();
			return data;
		});
		Files.createDirectories(SCREENS);
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] {picture};
		loader.save(SCREENS.resolve(name + "-" + THEME + "-" + ZOOM + ".png").toString(), SWT.IMAGE_PNG);
		assertTrue(colours(picture) >= FEWEST_COLOURS, name + " shows nothing");
	}

	private static int colours(ImageData picture) {
		Set<Integer> colours = new HashSet<>();
		for (int y = 0; y < picture.height; y += 3) {
			for (int x = 0; x < picture.width; x++) {
				colours.add(picture.getPixel(x, y));
			}
		}
		return colours.size();
	}
}
