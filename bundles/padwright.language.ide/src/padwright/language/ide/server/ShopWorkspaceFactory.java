package padwright.language.ide.server;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.xtext.ide.server.IMultiRootWorkspaceConfigFactory;

import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;

/**
 * Finds the shops in the folders that an editor has open, as the command line does: the marked shop around a folder,
 * or else the folder itself, and the marked shops further down.
 */
final class ShopWorkspaceFactory implements IMultiRootWorkspaceConfigFactory {

	@Override
	public ShopWorkspace getWorkspaceConfig(List<WorkspaceFolder> folders) {
		Set<Path> shops = new LinkedHashSet<>();
		folders.stream().flatMap(folder -> FileUris.path(folder.getUri()).stream()).forEach(opened -> {
			shops.add(ShopFolder.around(opened));
			markedBelow(opened).forEach(shops::add);
		});
		return new ShopWorkspace(shops);
	}

	private static Stream<Path> markedBelow(Path opened) {
		try {
			return ShopFolder.documents(opened).stream().map(Path::getParent).distinct().map(ShopFolder::around)
					.filter(shop -> Files.exists(shop.resolve(ShopFolder.MARKER)));
		} catch (UnreadableException nothingToRead) {
			return Stream.empty();
		}
	}
}
