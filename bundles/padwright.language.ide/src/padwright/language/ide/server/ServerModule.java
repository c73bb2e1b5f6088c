package padwright.language.ide.server;

import java.util.Collection;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceFactoryRegistryImpl;
import org.eclipse.xtext.build.IncrementalBuilder;
import org.eclipse.xtext.build.Indexer;
import org.eclipse.xtext.ide.server.BuildManager;
import org.eclipse.xtext.ide.server.ILanguageServerShutdownAndExitHandler;
import org.eclipse.xtext.ide.server.IMultiRootWorkspaceConfigFactory;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.ide.server.ProjectManager;
import org.eclipse.xtext.ide.server.WorkspaceManager;
import org.eclipse.xtext.ide.server.concurrent.RequestManager;
import org.eclipse.xtext.resource.FileExtensionProvider;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.resource.impl.ResourceServiceProviderRegistryImpl;
import org.eclipse.xtext.util.Modules2;

import com.google.inject.AbstractModule;
import com.google.inject.Guice;
import com.google.inject.Injector;
import com.google.inject.Provides;

import padwright.language.ide.PadwrightIdeSetup;

/** What a server of our one language needs beyond the common services: nothing is looked up in global registries. */
final class ServerModule extends AbstractModule {

	private final Injector language;
	private final ILanguageServerShutdownAndExitHandler session;
	private final Collection<String> extensions;

	ServerModule(Injector language, ILanguageServerShutdownAndExitHandler session) {
		this.language = language;
		this.session = session;
		this.extensions = language.getInstance(FileExtensionProvider.class).getFileExtensions();
	}

	/** A server that is connected to no client yet. */
	static PadwrightLanguageServer newServer(ILanguageServerShutdownAndExitHandler session) {
		Injector language = new PadwrightIdeSetup().createInjectorAndDoEMFRegistration();
		return Guice.createInjector(Modules2.mixin(new org.eclipse.xtext.ide.server.ServerModule(),
				new ServerModule(language, session))).getInstance(PadwrightLanguageServer.class);
	}

	@Override
	protected void configure() {
		bind(LanguageServerImpl.class).to(PadwrightLanguageServer.class);
		bind(WorkspaceManager.class).to(ShopWorkspaceManager.class);
		bind(RequestManager.class).to(ClientRequests.class);
		bind(IncrementalBuilder.class).to(ShopBuilder.class);
		bind(Indexer.class).to(ShopIndexer.class);
		bind(BuildManager.class).to(ShopBuilds.class);
		bind(ProjectManager.class).to(ShopContents.class);
		bind(IMultiRootWorkspaceConfigFactory.class).to(ShopWorkspaceFactory.class);
		bind(ILanguageServerShutdownAndExitHandler.class).toInstance(session);
		bind(IResourceServiceProvider.Registry.class).toInstance(languages());
	}

	private IResourceServiceProvider.Registry languages() {
		var registry = new ResourceServiceProviderRegistryImpl();
		var services = language.getInstance(IResourceServiceProvider.class);
		extensions.forEach(extension -> registry.getExtensionToFactoryMap().put(extension, services));
		return registry;
	}

	@Provides
	XtextResourceSet resourceSet(ShopFiles files) {
		XtextResourceSet resources = language.getInstance(XtextResourceSet.class);
		resources.getURIConverter().getURIHandlers().add(0, files);
		var registry = new ResourceFactoryRegistryImpl();
		Resource.Factory factory = language.getInstance(IResourceFactory.class);
		extensions.forEach(extension -> registry.getExtensionToFactoryMap().put(extension, factory));
		resources.setResourceFactoryRegistry(registry);
		return resources;
	}
}
