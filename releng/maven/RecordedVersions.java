import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.inject.Inject;
import javax.inject.Named;
import javax.inject.Singleton;
import org.apache.maven.repository.internal.DefaultVersionRangeResolver;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.impl.VersionRangeResolver;
import org.eclipse.aether.resolution.VersionRangeRequest;
import org.eclipse.aether.resolution.VersionRangeResolutionException;
import org.eclipse.aether.resolution.VersionRangeResult;
import org.eclipse.aether.util.ConfigUtils;
import org.eclipse.aether.version.Version;
import org.eclipse.sisu.Priority;

/**
 * Takes a range of versions, of which the poms of Eclipse are full, for the newest in it that has a recorded checksum, or
 * while recording for the newest of all. Otherwise a version published tomorrow would change, and then end, the build of
 * yesterday's sources, and the pom of every version in a range would be fetched.
 */
@Named
@Priority(1)
@Singleton
public final class RecordedVersions implements VersionRangeResolver {
	private static final String COMPARISON = "aether.artifactResolver.postProcessor.trustedChecksums";
	private static final String FOLDER = "aether.trustedChecksumsSource.summaryFile.basedir";
	private static final int START_OF_NAME = 66;

	private final VersionRangeResolver maven;
	private Set<String> recorded;

	@Inject
	RecordedVersions(DefaultVersionRangeResolver maven) {
		this.maven = maven;
	}

	@Override
	public VersionRangeResult resolveVersionRange(RepositorySystemSession session, VersionRangeRequest request)
			throws VersionRangeResolutionException {
		VersionRangeResult result = maven.resolveVersionRange(session, request);
		if (result.getVersionConstraint().getRange() == null || !isEnabled(session, COMPARISON)) {
			return result;
		}
		List<Version> versions = result.getVersions();
		if (!isEnabled(session, COMPARISON + ".record")) {
			Artifact artifact = request.getArtifact();
			String folder = artifact.getGroupId().replace('.', '/') + '/' + artifact.getArtifactId() + '/';
			Set<String> known = recorded(session);
			List<Version> ofThem = versions.stream().filter(each -> known.contains(folder + each)).toList();
			versions = ofThem.isEmpty() ? versions : ofThem;
		}
		return result.setVersions(versions.stream().max(Comparator.naturalOrder()).stream().toList());
	}

	private static boolean isEnabled(RepositorySystemSession session, String property) {
		return ConfigUtils.getBoolean(session, false, property);
	}

	private synchronized Set<String> recorded(RepositorySystemSession session) {
		if (recorded == null) {
			Path list = Path.of(ConfigUtils.getString(session, "", FOLDER), "checksums.sha256");
			try (Stream<String> lines = Files.lines(list)) {
				recorded = lines.map(line -> line.substring(START_OF_NAME, line.lastIndexOf('/')))
						.collect(Collectors.toUnmodifiableSet());
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
		return recorded;
	}
}
