BEGIN TRANSACTION;
CREATE TABLE batches (
	series INTEGER NOT NULL, 
	first INTEGER NOT NULL, 
	size INTEGER NOT NULL, 
	seal TEXT NOT NULL, 
	CONSTRAINT pk_batches PRIMARY KEY (series, first), 
	CONSTRAINT fk_batches_series FOREIGN KEY(series) REFERENCES series (number)
);
INSERT INTO "batches" VALUES(1,1,4,'1180c693b8831ea7dc955d16a89d8587573e46a6ca0bb1e3c8a83f3aaaa14841');
INSERT INTO "batches" VALUES(1,5,1,'60481b68c2b561b9ddf1fff1558aaad733fd698647c1df29c9895b2c02a824d2');
CREATE TABLE documents (
	id TEXT NOT NULL, 
	kind TEXT NOT NULL, 
	CONSTRAINT pk_documents PRIMARY KEY (id)
);
INSERT INTO "documents" VALUES('01a21441-5576-7296-847a-3d26cf71c233','note');
INSERT INTO "documents" VALUES('01a21441-557e-770d-bdcb-36ad1583901b','note');
INSERT INTO "documents" VALUES('01a21441-557f-76d7-8220-04a35d01470b','note');
INSERT INTO "documents" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed','pot');
INSERT INTO "documents" VALUES('01a21441-5585-7516-ae4c-21725a200e18','pot');
CREATE TABLE layout (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT layout_pkc PRIMARY KEY (version_num)
);
INSERT INTO "layout" VALUES('0001');
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
INSERT INTO "links" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed',1,'about salt','01a21441-5576-7296-847a-3d26cf71c233','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5');
INSERT INTO "links" VALUES('01a21441-5585-7516-ae4c-21725a200e18',1,'derived from','01a21441-5583-776e-98e7-5651ee6d89ed','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1');
INSERT INTO "links" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed',3,'about salt','01a21441-5576-7296-847a-3d26cf71c233','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5');
CREATE TABLE notebook (
	id TEXT NOT NULL, 
	at BIGINT NOT NULL, 
	CONSTRAINT pk_notebook PRIMARY KEY (id)
);
INSERT INTO "notebook" VALUES('01a21441-5573-7240-ab8d-e379262d79b8',1772443800000000);
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
INSERT INTO "revisions" VALUES('01a21441-5576-7296-847a-3d26cf71c233',1,1,'Salt','{"text":"Coarse salt takes longer.","title":"Salt"}','80384ff30468eda87aa81ebb3ee5af2968860a3a84498b1f4e83e152f5673b61','Invented Person',1772443807000000,'',NULL,'d16ece072684018697795b305deca8cd1326b2107a36dc5e5cae75fc4bba216a');
INSERT INTO "revisions" VALUES('01a21441-5576-7296-847a-3d26cf71c233',2,1,'Salt','{"text":"Twice as long (invented).","title":"Salt"}','f07f270ab9a02f3cc7ec5aabc574b8d2efe2ec0b8be037db31db6e60efa9b5d5','Invented Person',1772443814000000,'',NULL,'b6026adb0b75c4ed47af476701f9abf5932cd8a586bc044986586720846edb29');
INSERT INTO "revisions" VALUES('01a21441-557e-770d-bdcb-36ad1583901b',1,1,'Crème','{"text":"Wrong pot.","title":"Crème"}','5509e3037c0df8953b3d729523ca73e5e1a03384248df1b673204c4ad0910edc','Invented Person',1772443821000000,'by mistake',NULL,'36ee542b219d13dae2b6265d2e071d19c59d2672aeae803a84f8a780d605e934');
INSERT INTO "revisions" VALUES('01a21441-557f-76d7-8220-04a35d01470b',1,1,'Lost page','{"text":"Nobody misses it.","title":"Lost page"}','79f7b57f70c96c9f211dc8e9b8247825b763df09bb7287bd0d57998467ba890b','Invented Person',1772443828000000,'',NULL,'8f89819550530b11d5d64faa50d2c525f8671c622ad026504e22bbb7eb6d5122');
INSERT INTO "revisions" VALUES('01a21441-557f-76d7-8220-04a35d01470b',2,1,'Lost page',NULL,'','Invented Person',1772443835000000,'not ours',NULL,'53c8507cb8a2114a03316a1f7f0468be7d889692fb7a9ee1b16e2c7636025911');
INSERT INTO "revisions" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed',1,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Quay dough"}','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1','Invented Person',1772443842000000,'',NULL,'fedf7348af1d51ea575e63ebd212306ab5cd24adebebb42427b2a39d32d99e1d');
INSERT INTO "revisions" VALUES('01a21441-5585-7516-ae4c-21725a200e18',1,1,'Pier dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Pier dough"}','72cee2cdce06e83b56c6da8b700aeff7cef969f006d3da08c5e0c050ff753973','Invented Person',1772443849000000,'',NULL,'fb2c6648953dffa0360dcdfd9335b268aab2ad2ae4b6b2393948c47bf88168f2');
INSERT INTO "revisions" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed',2,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":false,"title":"Quay dough"}','35a87139545af5541c3d4f518904a6d07796bfe3b5bf151e163746cda916d13c','Invented Person',1772443856000000,'',NULL,'351352925b00b238d07c86d8479a5cd41a03546418ca1b7f4265c3d5e4f6a9f3');
INSERT INTO "revisions" VALUES('01a21441-5583-776e-98e7-5651ee6d89ed',3,1,'Quay dough','{"amounts":[{"amount_g":200.5,"name":"flour"}],"stirred":true,"title":"Quay dough"}','276d7a53df67876627f080078d8aab173e1164efdc67dad1a43ed1bc942ed2c1','Invented Person',1772443863000000,'it was better',1,'6ce6c8e9abe6f81716c31817a2b8ca536165d9081e83ad55b06a6373c2cc7305');
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
INSERT INTO "series" VALUES(1,'01a21441-558d-76cc-9048-35f8a96ad994','Ball, two pins','ohm','an invented meter','held by hand','Invented Person',1772443870000000,'01a21441-5585-7516-ae4c-21725a200e18','72cee2cdce06e83b56c6da8b700aeff7cef969f006d3da08c5e0c050ff753973','3556c0f1fc0a7138a1b35a98a3cf503910b405f84f0b370b3f27b0e6b99f5851');
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
COMMIT;
