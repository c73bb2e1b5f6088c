package padwright.workbench.app;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;

import padwright.workbench.session.LanguageSession;

/** How the workbench starts and ends. */
final class PadwrightAdvisor extends WorkbenchAdvisor {

	private final Arguments arguments;

	PadwrightAdvisor(Arguments arguments) {
		this.arguments = arguments;
	}

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		IDE.registerAdapters();
		configurer.setSaveAndRestore(true);
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
		arguments.open();
	}

	@Override
	public void postShutdown() {
		LanguageSession.get().close();
		try {
			ResourcesPlugin.getWorkspace().save(true, null);
		} catch (CoreException notSaved) {
			ILog.of(PadwrightAdvisor.class).log(notSaved.getStatus());
		}
	}
}
