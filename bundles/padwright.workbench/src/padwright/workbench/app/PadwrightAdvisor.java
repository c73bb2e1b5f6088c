package padwright.workbench.app;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;

import padwright.language.ide.server.LocalServer;
import padwright.workbench.bench.Bench;
import padwright.workbench.editor.Places;
import padwright.workbench.prefs.Preferences;
import padwright.workbench.recovery.Autosave;
import padwright.workbench.recovery.Recovery;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.OpenShops;

/** How the workbench starts and ends. */
final class PadwrightAdvisor extends WorkbenchAdvisor {

	private final Arguments arguments;
	private final Autosave autosave = new Autosave();

	PadwrightAdvisor(Arguments arguments) {
		this.arguments = arguments;
	}

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		IDE.registerAdapters();
		configurer.setSaveAndRestore(true);
		MarkerImages.declare(configurer);
		Preferences.applyShown();
		Preferences.onShown(() -> {
			Bench.refreshAll();
			LanguageSession.get().judgeAnew();
		});
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new WindowAdvisor(configurer);
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return BenchPerspective.ID;
	}

	@Override
	public IAdaptable getDefaultPageInput() {
		return ResourcesPlugin.getWorkspace().getRoot();
	}

	@Override
	public void postStartup() {
		LanguageSession.get().start();
		autosave.start();
		arguments.open();
		openLeftBehind();
	}

	/** What was not saved when an earlier run was cut off is offered again. */
	private static void openLeftBehind() {
		OpenShops.folders().stream().flatMap(shop -> Recovery.leftBehind(shop).stream())
				.flatMap(document -> Documents.file(LocalServer.uri(document)).stream()).filter(IFile::exists)
				.forEach(Places::editor);
	}

	@Override
	public void postShutdown() {
		autosave.stop();
		LanguageSession.get().close();
		try {
			ResourcesPlugin.getWorkspace().save(true, null);
		} catch (CoreException notSaved) {
			ILog.of(PadwrightAdvisor.class).log(notSaved.getStatus());
		}
	}
}
