BEGIN TRANSACTION;
CREATE TABLE batches (
	series INTEGER NOT NULL, 
	first INTEGER NOT NULL, 
	size INTEGER NOT NULL, 
	seal TEXT NOT NULL, 
	CONSTRAINT pk_batches PRIMARY KEY (series, first), 
	CONSTRAINT fk_batches_series FOREIGN KEY(series) REFERENCES series (number)
);
INSERT INTO "batches" VALUES(1,1,4,'c0fab3f57f96c262cac5c52481cccc6da5493efebe671b0f5de71c4ba7ee9631');
INSERT INTO "batches" VALUES(1,5,1,'e82fd06600a7078c391a0b325a12b55fa84b90b520ed2c4a6a5f6d174d0e5362');
CREATE TABLE documents (
	id TEXT NOT NULL, 
	kind TEXT NOT NULL, 
	CONSTRAINT pk_documents PRIMARY KEY (id)
);
INSERT INTO "documents" VALUES('01a2152a-5543-7067-a42e-55f170c767ff','note');
INSERT INTO "documents" VALUES('01a2152a-554c-7569-913b-b8968a8660eb','note');
INSERT INTO "documents" VALUES('01a2152a-554e-70c0-9a74-390a0c9b9280','note');
INSERT INTO "documents" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6','pot');
INSERT INTO "documents" VALUES('01a2152a-5555-72cf-96da-581a545a0438','pot');
CREATE TABLE layout (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT layout_pkc PRIMARY KEY (version_num)
);
INSERT INTO "layout" VALUES('0003');
CREATE TABLE links (
	document TEXT NOT NULL, 
	number INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	to_document TEXT NOT NULL, 
	to_hash TEXT NOT NULL, 
	CONSTRAINT pk_links PRIMARY KEY (document, number, name), 
	CONSTRAINT fk_links_document_number FOREIGN KEY(document, number) REFERENCES revisions (document, number), 
	CONSTRAINT fk_links_to_document FOREIGN KEY(to_document) REFERENCES documents (id)
);
INSERT INTO "links" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6',1,'about salt','01a2152a-5543-7067-a42e-55f170c767ff','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5');
INSERT INTO "links" VALUES('01a2152a-5555-72cf-96da-581a545a0438',1,'derived from','01a2152a-5553-777c-a2b5-2d5c6c5940a6','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1');
INSERT INTO "links" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6',3,'about salt','01a2152a-5543-7067-a42e-55f170c767ff','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5');
CREATE TABLE notebook (
	id TEXT NOT NULL, 
	at BIGINT NOT NULL, 
	CONSTRAINT pk_notebook PRIMARY KEY (id)
);
INSERT INTO "notebook" VALUES('01a2152a-553f-7789-bd44-5541ab697ef1',1772443800000000);
CREATE TABLE readings (
	series INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	at BIGINT NOT NULL, 
	value DOUBLE, 
	remark TEXT, 
	CONSTRAINT pk_readings PRIMARY KEY (series, number), 
	CONSTRAINT fk_readings_series FOREIGN KEY(series) REFERENCES series (number)
)
 WITHOUT ROWID

;
INSERT INTO "readings" VALUES(1,1,1772443877000000,812.5,NULL);
INSERT INTO "readings" VALUES(1,2,1772443877000000,799.25,NULL);
INSERT INTO "readings" VALUES(1,3,1772443877000000,NULL,'over range');
INSERT INTO "readings" VALUES(1,4,1772443877000000,0.1,NULL);
INSERT INTO "readings" VALUES(1,5,1772443884000000,801.0,'pressed');
CREATE TABLE revisions (
	document TEXT NOT NULL, 
	number INTEGER NOT NULL, 
	schema INTEGER NOT NULL, 
	title TEXT NOT NULL, 
	body TEXT, 
	hash TEXT NOT NULL, 
	made_by TEXT NOT NULL, 
	at BIGINT NOT NULL, 
	note TEXT NOT NULL, 
	restored INTEGER, 
	seal TEXT NOT NULL, 
	CONSTRAINT pk_revisions PRIMARY KEY (document, number), 
	CONSTRAINT fk_revisions_document FOREIGN KEY(document) REFERENCES documents (id)
);
INSERT INTO "revisions" VALUES('01a2152a-5543-7067-a42e-55f170c767ff',1,1,'Salt','{"text":"Coarse salt takes longer.","title":"Salt"}','80384ff30468eda87aa81ebb3ee5af2968860a3a84498b1f4e83e152f5673b61','Invented Person',1772443807000000,'',NULL,'13464d8320df7d682d1de3aa5ce9d465dc80b12847fab75fc994201249e8dbfd');
INSERT INTO "revisions" VALUES('01a2152a-5543-7067-a42e-55f170c767ff',2,1,'Salt','{"text":"Twice as long (invented).","title":"Salt"}','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5','Invented Person',1772443814000000,'',NULL,'31ed00a566857ce3ddd5566af501dade0ace439f75adc90ef8f6d3995a11c57c');
INSERT INTO "revisions" VALUES('01a2152a-554c-7569-913b-b8968a8660eb',1,1,'Crème','{"text":"Wrong pot.","title":"Crème"}','5509e3037c0df8953b3d729523ca73e5e1a03384248df1b673204c4ad0910edc','Invented Person',1772443821000000,'by mistake',NULL,'2fd4d4e48f3c25218814c7c893e05b48585b296c0777ffcaea932577047ac4b2');
INSERT INTO "revisions" VALUES('01a2152a-554e-70c0-9a74-390a0c9b9280',1,1,'Lost page','{"text":"Nobody misses it.","title":"Lost page"}','79f7b57f70c96c9f211dc8e9b8247825b763df09bb7287bd0d57998467ba890b','Invented Person',1772443828000000,'',NULL,'3b6b7bc4312c7ac729f3a8b6ea8c63edc7cf99f7cc0ec03505b451d85ff16a6e');
INSERT INTO "revisions" VALUES('01a2152a-554e-70c0-9a74-390a0c9b9280',2,1,'Lost page',NULL,'','Invented Person',1772443835000000,'not ours',NULL,'e6bb439fe348bbecff6a4d3e9838013210be10d94bfbe38f288850f99b92caa0');
INSERT INTO "revisions" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6',1,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Quay dough"}','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1','Invented Person',1772443842000000,'',NULL,'6087c3fac682333e6ecc13413b983e2e8e7b58621b795e7a3c9d723ec7705286');
INSERT INTO "revisions" VALUES('01a2152a-5555-72cf-96da-581a545a0438',1,1,'Pier dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Pier dough"}','72cee2cdce06e83b56c6da8b700aeff7cef969f006d3da08c5e0c050ff753973','Invented Person',1772443849000000,'',NULL,'ca31a8d1dad127fed869c2db41dff6d41f4b08ad4ff013e34e94907adbc74df3');
INSERT INTO "revisions" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6',2,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":false,"title":"Quay dough"}','35a87139545af5541c3d4f518904a6d07796bfe3b5bf151e163746cda916d13c','Invented Person',1772443856000000,'',NULL,'bd5a5293dd708dd03c9d30de8eaf38e7e3128b90768980feea4ac8e0d13c9f41');
INSERT INTO "revisions" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6',3,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Quay dough"}','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1','Invented Person',1772443863000000,'it was better',1,'12f31d6721caa9f7d65525f3306db4ae72dee9213248350380d90ca5f054979f');
CREATE TABLE search (
	document TEXT NOT NULL, 
	words TEXT NOT NULL, 
	CONSTRAINT pk_search PRIMARY KEY (document), 
	CONSTRAINT fk_search_document FOREIGN KEY(document) REFERENCES documents (id)
);
INSERT INTO "search" VALUES('01a2152a-5543-7067-a42e-55f170c767ff','salt
twice as long (invented).');
INSERT INTO "search" VALUES('01a2152a-554c-7569-913b-b8968a8660eb','creme
wrong pot.');
INSERT INTO "search" VALUES('01a2152a-554e-70c0-9a74-390a0c9b9280','lost page');
INSERT INTO "search" VALUES('01a2152a-5555-72cf-96da-581a545a0438','pier dough
flour');
INSERT INTO "search" VALUES('01a2152a-5553-777c-a2b5-2d5c6c5940a6','quay dough
flour');
CREATE TABLE series (
	number INTEGER NOT NULL, 
	id TEXT NOT NULL, 
	title TEXT NOT NULL, 
	unit TEXT NOT NULL, 
	instrument TEXT NOT NULL, 
	method TEXT NOT NULL, 
	made_by TEXT NOT NULL, 
	at BIGINT NOT NULL, 
	about_document TEXT, 
	about_hash TEXT, 
	seal TEXT NOT NULL, 
	CONSTRAINT pk_series PRIMARY KEY (number), 
	CONSTRAINT uq_series_id UNIQUE (id), 
	CONSTRAINT fk_series_about_document FOREIGN KEY(about_document) REFERENCES documents (id)
);
INSERT INTO "series" VALUES(1,'01a2152a-555e-7088-9aef-0849723619a3','Ball, two pins','ohm','an invented meter','held by hand','Invented Person',1772443870000000,'01a2152a-5555-72cf-96da-581a545a0438','72cee2cdce06e83b56c6da8b700aeff7cef969f006d3da08c5e0c050ff753973','aeb63783c9ad051c3be644758c04e161cb2c3a61ace0740e9dbd6299cf7ba891');
CREATE INDEX ix_revisions_hash ON revisions (hash);
CREATE INDEX ix_links_to_document ON links (to_document);
CREATE INDEX ix_readings_series_at ON readings (series, at);
CREATE TRIGGER notebook_no_update BEFORE UPDATE ON notebook BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER notebook_no_delete BEFORE DELETE ON notebook BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER documents_no_update BEFORE UPDATE ON documents BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER documents_no_delete BEFORE DELETE ON documents BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER revisions_no_update BEFORE UPDATE ON revisions BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER revisions_no_delete BEFORE DELETE ON revisions BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER links_no_update BEFORE UPDATE ON links BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER links_no_delete BEFORE DELETE ON links BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER series_no_update BEFORE UPDATE ON series BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER series_no_delete BEFORE DELETE ON series BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER readings_no_update BEFORE UPDATE ON readings BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER readings_no_delete BEFORE DELETE ON readings BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER batches_no_update BEFORE UPDATE ON batches BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER batches_no_delete BEFORE DELETE ON batches BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER notebook_no_replace_id BEFORE INSERT ON notebook WHEN EXISTS (SELECT 1 FROM notebook WHERE id = NEW.id) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER documents_no_replace_id BEFORE INSERT ON documents WHEN EXISTS (SELECT 1 FROM documents WHERE id = NEW.id) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER revisions_no_replace_number BEFORE INSERT ON revisions WHEN EXISTS (SELECT 1 FROM revisions WHERE document = NEW.document AND number = NEW.number) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER links_no_replace_name BEFORE INSERT ON links WHEN EXISTS (SELECT 1 FROM links WHERE document = NEW.document AND number = NEW.number AND name = NEW.name) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER series_no_replace_number BEFORE INSERT ON series WHEN EXISTS (SELECT 1 FROM series WHERE number = NEW.number) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER series_no_replace_id BEFORE INSERT ON series WHEN EXISTS (SELECT 1 FROM series WHERE id = NEW.id) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER readings_no_replace_number BEFORE INSERT ON readings WHEN EXISTS (SELECT 1 FROM readings WHERE series = NEW.series AND number = NEW.number) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
CREATE TRIGGER batches_no_replace_first BEFORE INSERT ON batches WHEN EXISTS (SELECT 1 FROM batches WHERE series = NEW.series AND first = NEW.first) BEGIN SELECT RAISE(ABORT, 'a notebook only grows'); END;
COMMIT;
