package padwright.language.ide.server;

import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.workspace.IProjectConfig;
import org.eclipse.xtext.workspace.IWorkspaceConfig;

/** The shops that are open in an editor. */
final class ShopWorkspace implements IWorkspaceConfig {

	private final Map<Path, ShopProject> shops = new LinkedHashMap<>();

	ShopWorkspace(Collection<Path> folders) {
		folders.forEach(folder -> shops.put(folder, new ShopProject(folder, this)));
	}

	@Override
	public Set<? extends IProjectConfig> getProjects() {
		return Set.copyOf(shops.values());
	}

	/** The innermost shop around a file, or null. */
	@Override
	public ShopProject findProjectContaining(URI member) {
		for (Path folder = FileUris.path(member).orElse(null); folder != null; folder = folder.getParent()) {
			ShopProject shop = shops.get(folder);
			if (shop != null) {
				return shop;
			}
		}
		return null;
	}

	@Override
	public ShopProject findProjectByName(String name) {
		return shops.get(Path.of(name));
	}
}
