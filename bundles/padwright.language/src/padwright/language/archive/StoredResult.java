package padwright.language.archive;

/**
 * The result for a file with all that it was found from.
 *
 * @param stamp of the file when it was looked at; null for a text that is not on disk
 * @param hash of its content
 * @param source whether other files may have links to it
 * @param basis fingerprint of all else that the result depends on
 */
record StoredResult(FileStamp stamp, String hash, boolean source, String basis, FileResult result) {

	/** Whether a file with this stamp has the same content for sure. */
	boolean holds(FileStamp now) {
		return stamp != null && stamp.settled() && now.equals(stamp) && FileText.isOfReadable(hash);
	}
}
