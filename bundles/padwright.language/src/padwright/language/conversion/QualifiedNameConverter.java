package padwright.language.conversion;

import java.util.Arrays;
import java.util.stream.Collectors;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.nodemodel.INode;

/** Converts names with points between them. */
final class QualifiedNameConverter implements IValueConverter<String> {

	private static final String POINT = ".";

	private final IValueConverter<String> names;

	QualifiedNameConverter(IValueConverter<String> names) {
		this.names = names;
	}

	/** No name has a point inside. */
	@Override
	public String toValue(String text, INode node) {
		return text == null ? null : Arrays.stream(text.split("\\.", -1)).map(String::strip)
				.map(name -> names.toValue(name, node)).collect(Collectors.joining(POINT));
	}

	@Override
	public String toString(String name) {
		return Arrays.stream(name.split("\\.", -1)).map(names::toString).collect(Collectors.joining(POINT));
	}
}
