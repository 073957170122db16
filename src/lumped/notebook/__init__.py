"""What people write and measure: revisions of documents and append-only readings, in one SQL store."""
