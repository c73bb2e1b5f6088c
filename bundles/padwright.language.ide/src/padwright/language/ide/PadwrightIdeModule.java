package padwright.language.ide;

import org.eclipse.xtext.parser.IEncodingProvider;
import org.eclipse.xtext.resource.IDefaultResourceDescriptionStrategy;
import org.eclipse.xtext.resource.IResourceDescription;

import com.google.inject.Binder;

import padwright.language.ide.index.AffectedDocuments;
import padwright.language.ide.index.FingerprintedNames;
import padwright.language.ide.index.Utf8;

/** The services that editors of every kind share. */
public class PadwrightIdeModule extends AbstractPadwrightIdeModule {

	public void configureEncoding(Binder binder) {
		binder.bind(IEncodingProvider.class).to(Utf8.class);
	}

	public Class<? extends IDefaultResourceDescriptionStrategy> bindIDefaultResourceDescriptionStrategy() {
		return FingerprintedNames.class;
	}

	public Class<? extends IResourceDescription.Manager> bindIResourceDescription$Manager() {
		return AffectedDocuments.class;
	}
}
