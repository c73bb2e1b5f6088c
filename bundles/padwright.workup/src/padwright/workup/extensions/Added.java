package padwright.workup.extensions;

import java.nio.file.Path;

/**
 * Something that an extension adds; to be used through {@link Extensions#use} alone, since it may fail.
 *
 * @param jar that it came in
 */
public record Added<T>(Path jar, T thing) {
}
