-- The demonstration of conservedb: everything in it is invented.
-- Made by: python -m conservedb.demo. Load it with: sqlite3 demo.db < demo.sqlite.sql
PRAGMA foreign_keys=OFF;
BEGIN;
PRAGMA application_id=1667514929;
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO alembic_version VALUES('0001');
CREATE TABLE "database" (
	id INTEGER NOT NULL, 
	uuid TEXT NOT NULL, 
	name TEXT, 
	created TEXT NOT NULL, 
	fixed_today TEXT, 
	CONSTRAINT pk_database PRIMARY KEY (id), 
	CONSTRAINT ck_database_one_row CHECK (id = 1)
)
 STRICT

;
INSERT INTO database VALUES(1,'6f3c1d2e-5a74-4b0e-9c55-8a1b7e20d904','Museum of Saltmarsh Quay (invented)','2026-11-02','2026-11-02');
CREATE TABLE material_class (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	"key" TEXT NOT NULL, 
	name TEXT, 
	name_folded TEXT, 
	parent_id INTEGER, 
	CONSTRAINT ck_material_class_not_its_own_parent CHECK (parent_id <> id), 
	CONSTRAINT fk_material_class_parent_id FOREIGN KEY(parent_id) REFERENCES material_class (id), 
	CONSTRAINT uq_material_class_key UNIQUE ("key"), 
	CONSTRAINT uq_material_class_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO material_class VALUES(1,'d249cd5d-eb93-5c78-9858-a618a4da6d7d','2026-11-02','substrate','substrate','substrate',NULL);
INSERT INTO material_class VALUES(2,'20259dbb-ae35-5737-af9d-7531e10fcd72','2026-11-02','stone','stone','stone',1);
INSERT INTO material_class VALUES(3,'7a8b7a42-d9dd-5b03-84ff-15c05a6b1e64','2026-11-02','calcareous-stone','calcareous stone','calcareous stone',2);
INSERT INTO material_class VALUES(4,'4b0a6353-dc86-5666-9943-ea5db5e7973c','2026-11-02','metal','metal','metal',1);
INSERT INTO material_class VALUES(5,'e5cde9db-6c17-5f2f-9bf9-aa4d16dbdf24','2026-11-02','copper-alloy','copper alloy','copper alloy',4);
INSERT INTO material_class VALUES(6,'d353156a-0826-5340-be3c-93bbdcef3a1d','2026-11-02','ferrous','iron and steel','iron and steel',4);
INSERT INTO material_class VALUES(7,'87e4ab7c-9af7-58b7-829e-e223f0ce6429','2026-11-02','ceramic-body','ceramic body','ceramic body',1);
INSERT INTO material_class VALUES(8,'21f54999-af5c-5922-ad1b-da758a1e7c9b','2026-11-02','wood','wood','wood',1);
INSERT INTO material_class VALUES(9,'12ceb16a-d61f-572d-b0a8-10e143d6eac2','2026-11-02','glass','glass','glass',1);
INSERT INTO material_class VALUES(10,'dc3ab229-ad23-55fe-820f-64e4fcc983fb','2026-11-02','cast-body','cast mineral body','cast mineral body',1);
INSERT INTO material_class VALUES(11,'b08fb4c7-119f-5d99-9b07-f0e66e88bbd0','2026-11-02','organic-support','other organic support','other organic support',1);
INSERT INTO material_class VALUES(12,'0f5eabb5-1bed-56c3-af63-1f2c6fc8920b','2026-11-02','mineral-binder','mineral binder','mineral binder',NULL);
INSERT INTO material_class VALUES(13,'35f0dd40-f8db-532c-a784-138b7a403b19','2026-11-02','lime-binder','lime mortar','lime mortar',12);
INSERT INTO material_class VALUES(14,'bd635fa8-ed76-50de-a567-23874a1d5de9','2026-11-02','hydraulic-binder','hydraulic cement mortar','hydraulic cement mortar',12);
INSERT INTO material_class VALUES(15,'709bdb05-c5df-56ba-9117-754b2e1bbe14','2026-11-02','gypsum-binder','gypsum mortar','gypsum mortar',12);
INSERT INTO material_class VALUES(16,'d8ee4779-d2b9-5860-bfa0-fb6a2f613ec2','2026-11-02','melt-set','melted setting material','melted setting material',NULL);
INSERT INTO material_class VALUES(17,'cb0111e3-e474-58d3-99b9-3f1fdfd88ca9','2026-11-02','synthetic-thermoplastic','thermoplastic resin','thermoplastic resin',NULL);
INSERT INTO material_class VALUES(18,'8e9a1442-2221-5968-b27f-4bade6fadbbd','2026-11-02','acrylic-resin','acrylic resin','acrylic resin',17);
INSERT INTO material_class VALUES(19,'4f2425b2-f219-5256-b5b8-0ab665d3f939','2026-11-02','vinyl-resin','vinyl resin','vinyl resin',17);
INSERT INTO material_class VALUES(20,'b5a6636f-6644-53c8-8cf7-5a8fdbc10705','2026-11-02','cellulose-ester','cellulose ester','cellulose ester',17);
INSERT INTO material_class VALUES(21,'79e97617-e83a-523e-99cf-d909352130e7','2026-11-02','ketone-resin','ketone resin','ketone resin',17);
INSERT INTO material_class VALUES(22,'2422862b-11b8-5c79-8a6e-3164aed98f50','2026-11-02','heat-seal','heat-seal adhesive','heat-seal adhesive',17);
INSERT INTO material_class VALUES(23,'ea7a285b-fcd8-5bea-998a-8549d57c3903','2026-11-02','crosslinked-resin','cross-linked resin','cross-linked resin',NULL);
INSERT INTO material_class VALUES(24,'bf65ba94-6169-5abd-8415-dae15227c996','2026-11-02','epoxy-resin','epoxy resin','epoxy resin',23);
INSERT INTO material_class VALUES(25,'fc55139a-6409-5cd6-8c1d-2995ee11c2ed','2026-11-02','polyester-resin','polyester resin','polyester resin',23);
INSERT INTO material_class VALUES(26,'89eb37bd-d418-5004-accf-68642a93b8a1','2026-11-02','cyanoacrylate','cyanoacrylate','cyanoacrylate',23);
INSERT INTO material_class VALUES(27,'4f391a47-557c-5a71-82a3-8e929c81d9dc','2026-11-02','elastomer','elastomer','elastomer',23);
INSERT INTO material_class VALUES(28,'6a911be9-3c1e-5fc4-9036-9c89be783a46','2026-11-02','silicate-consolidant','silicate consolidant','silicate consolidant',23);
INSERT INTO material_class VALUES(29,'e21b5490-e8b9-5326-92c5-ea4d8fd27810','2026-11-02','natural-resin','natural resin','natural resin',NULL);
INSERT INTO material_class VALUES(30,'9e6979d9-7ecf-5f5b-b90d-1af98041205e','2026-11-02','protein','protein','protein',NULL);
INSERT INTO material_class VALUES(31,'c477db6e-faa0-591c-a2bb-08076d3f1696','2026-11-02','polysaccharide','polysaccharide','polysaccharide',NULL);
INSERT INTO material_class VALUES(32,'c420a24c-580c-5fcc-8757-fcfe7af8e153','2026-11-02','cellulose-ether','cellulose ether','cellulose ether',31);
INSERT INTO material_class VALUES(33,'22aa534a-1723-5a0e-a538-261aaa0a679d','2026-11-02','wax','wax','wax',NULL);
INSERT INTO material_class VALUES(34,'5e9c3fd0-6f72-5f3e-8cb8-0972fcf30935','2026-11-02','volatile-binder','volatile binding medium','volatile binding medium',NULL);
INSERT INTO material_class VALUES(35,'a2c6859e-5ec9-529b-b54c-4596e62f40cf','2026-11-02','drying-oil','drying oil and oil paint','drying oil and oil paint',NULL);
INSERT INTO material_class VALUES(36,'448cd532-d355-542a-88e2-6547875bb3ee','2026-11-02','bituminous','bituminous matter','bituminous matter',NULL);
INSERT INTO material_class VALUES(37,'5a2783d4-2dab-524b-a0b9-19a509e6204b','2026-11-02','paint','paint','paint',NULL);
INSERT INTO material_class VALUES(38,'8b9652c2-445c-5751-9075-aa1a04541481','2026-11-02','metal-leaf','metal leaf','metal leaf',NULL);
INSERT INTO material_class VALUES(39,'7885f25c-4eec-564b-852f-bdd7ba70dd27','2026-11-02','pigment-filler','pigment and filler','pigment and filler',NULL);
INSERT INTO material_class VALUES(40,'f1cf4d31-a62a-5a59-8852-d9db00cf3b5b','2026-11-02','fibre-sheet','paper and textile','paper and textile',NULL);
INSERT INTO material_class VALUES(41,'53647600-8e77-51f6-ad14-38fb7b3beaaf','2026-11-02','arisen','matter arisen on the object','matter arisen on the object',NULL);
INSERT INTO material_class VALUES(42,'38930a0c-3119-5829-ae5c-52a12cb94cbd','2026-11-02','crust','crust','crust',41);
INSERT INTO material_class VALUES(43,'f8992511-7747-51a0-8189-94164f291b09','2026-11-02','corrosion-product','corrosion product','corrosion product',41);
INSERT INTO material_class VALUES(44,'c9c60593-c0e5-51c2-9d95-782a78a11b89','2026-11-02','salt','soluble salt','soluble salt',41);
INSERT INTO material_class VALUES(45,'57c56b2e-f995-5258-ac93-bd640c97c35d','2026-11-02','biofilm','biological growth','biological growth',41);
INSERT INTO material_class VALUES(46,'c99a1460-ebf4-5a0d-9e2e-d9938f894003','2026-11-02','deposit','dirt and deposit','dirt and deposit',41);
INSERT INTO material_class VALUES(47,'b1042472-405a-5db8-bee0-631acb5dafa3','2026-11-02','patina','patina','patina',41);
INSERT INTO material_class VALUES(48,'51831043-5c97-5878-8afc-ba21208706cd','2026-11-02','agent','agent not meant to stay','agent not meant to stay',NULL);
INSERT INTO material_class VALUES(49,'0568410c-65dd-516f-b50d-47c1ab26aa5f','2026-11-02','solvent','organic solvent','organic solvent',48);
INSERT INTO material_class VALUES(50,'b0fb41c7-2925-5d19-882d-ddac23eac9da','2026-11-02','acid','acid','acid',48);
INSERT INTO material_class VALUES(51,'a0625355-e0c7-52de-8f61-0d859a0590d5','2026-11-02','alkali','alkali','alkali',48);
INSERT INTO material_class VALUES(52,'e6f8fc99-f6b8-5797-916d-2d346d87e276','2026-11-02','chelator','chelating agent','chelating agent',48);
INSERT INTO material_class VALUES(53,'6f68dd51-a22c-50c3-939e-f05324603cc9','2026-11-02','aqueous','water and water solution','water and water solution',48);
INSERT INTO material_class VALUES(54,'b38825a6-ea13-5bf7-853c-9213ae803cd9','2026-11-02','abrasive','abrasive','abrasive',48);
INSERT INTO material_class VALUES(55,'a0b0c8c2-bdfd-5680-b047-06a98ed183c0','2026-11-02','energy','heat and light','heat and light',48);
INSERT INTO material_class VALUES(56,'ab45a3c0-144c-5fab-9c9b-80dec6e66420','2026-11-02','pesticide','pesticide','pesticide',48);
CREATE TABLE object (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	number TEXT NOT NULL, 
	number_sort TEXT NOT NULL, 
	number_folded TEXT NOT NULL, 
	title TEXT, 
	title_folded TEXT, 
	kind TEXT, 
	maker TEXT, 
	made_words TEXT, 
	made_edtf TEXT, 
	made_earliest INTEGER NOT NULL, 
	made_latest INTEGER NOT NULL, 
	made_flags INTEGER NOT NULL, 
	made_derived TEXT NOT NULL, 
	whereabouts TEXT, 
	note TEXT, 
	CONSTRAINT ck_object_made_in_order CHECK (made_earliest <= made_latest), 
	CONSTRAINT uq_object_number_folded UNIQUE (number_folded), 
	CONSTRAINT uq_object_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO object VALUES(1,'439145b4-7527-5815-bab7-01a49f6f6f9a','2026-11-02','SQ.1902.7','sq.0041902.0017','sq.1902.7','The Four Winds, wall fountain','the four winds, wall fountain','wall fountain','Jerrold Haske, sculptor; Tobias Wend, founder','1741','1741',635523,635887,0,'edtf','Store 3, bay 2','Limestone and bronze, about 2.9 m high. Stands assembled on a steel frame since 2013, except four parts kept in boxes. A move to the new gallery is planned for 2027.');
INSERT INTO object VALUES(2,'54fb8f58-592a-5e99-8355-81f2ee71c580','2026-11-02','SQ.1887.3','sq.0041887.0013','sq.1887.3','The Herring Fleet, great vase','the herring fleet, great vase','tin-glazed earthenware vase','unknown','c. 1765','1765~',644289,644653,2,'words','Gallery 4, case 2','720 mm high. Broken in 1889; twenty sherds numbered by Miss Lisle.');
INSERT INTO object VALUES(3,'0d23e9da-f29f-52c0-9cab-5cfd09b5b07c','2026-11-02','SQ.1894.12','sq.0041894.00212','sq.1894.12','Dish with a mermaid','dish with a mermaid','slipware dish','unknown','late 17th century','1667/1699',608495,620547,0,'words','Gallery 4, case 1',NULL);
INSERT INTO object VALUES(4,'61005fff-23d8-5f1f-b056-e90df4861340','2026-11-02','SQ.1911.40','sq.0041911.00240','sq.1911.40','The Net Mender','the net mender','porcelain figure','unknown','1770~','1770~',646115,646479,2,'edtf','Store 1, cabinet 6',NULL);
INSERT INTO object VALUES(5,'e27d524a-ec34-509f-b6ec-e62ea9af6ab6','2026-11-02','SQ.1903.21','sq.0041903.00221','sq.1903.21','Pilot''s chest','pilot''s chest','oak chest','unknown','1660s','166X',605938,609590,0,'words','Gallery 2','Given with rope and sailcloth in it.');
INSERT INTO object VALUES(6,'cd4764a0-395e-5189-9e64-6eb846e9e0fb','2026-11-02','SQ.1926.5','sq.0041926.0015','sq.1926.5','Figurehead of the brig Margery Dawes','figurehead of the brig margery dawes','carved and painted figurehead','unknown','1838','1838',670951,671315,0,'edtf','Stair hall','Came off the brig in 1907 and stood nineteen years in a yard.');
INSERT INTO object VALUES(7,'0582c5d8-4354-5db5-9cde-6847202d4a4f','2026-11-02','SQ.1932.14','sq.0041932.00214','sq.1932.14','Regatta cup','regatta cup','silver cup with cover','unknown','1886','1886',688483,688847,0,'edtf','Store 2, safe',NULL);
INSERT INTO object VALUES(8,'e86f77fc-853a-59a6-b16b-0f8bf90eaa97','2026-11-02','SQ.1949.8','sq.0041949.0018','sq.1949.8','Harbour lantern','harbour lantern','tinplate and glass lantern','unknown','c. 1850','1850~',675334,675698,2,'words','Gallery 1',NULL);
INSERT INTO object VALUES(9,'91d527a3-ba5a-54b9-8cb1-e3194d220175','2026-11-02','SQ.1899.2','sq.0041899.0012','sq.1899.2','Bust of a harbour master','bust of a harbour master','plaster bust','Lucan Farr','1861','1861',679352,679716,0,'edtf','Store 1, rack 9','Cast in piece moulds; a sitter nobody has named.');
INSERT INTO object VALUES(10,'083a3342-f31e-5308-a79b-4dde0304ed99','2026-11-02','SQ.1958.77','sq.0041958.00277','sq.1958.77','Launching goblet','launching goblet','wheel-engraved glass goblet','unknown','1790/1800','1790/1800',653420,657436,0,'edtf','Studio 1',NULL);
INSERT INTO object VALUES(11,'192cd8b1-da15-5a3e-a81c-4da2a48856a6','2026-11-02','SQ.1971.30','sq.0041971.00230','sq.1971.30','The Pilot Boat, window panel','the pilot boat, window panel','leaded glass panel','unknown','1879','1879',685926,686290,0,'edtf','Store 2, rack 3',NULL);
INSERT INTO object VALUES(12,'177ad4cd-badd-5414-8ebf-ac338cb6a196','2026-11-02','SQ.1905.16','sq.0041905.00216','sq.1905.16','Tablet to the crew of the Constant','tablet to the crew of the constant','marble wall tablet','unknown','1802','1802',657802,658166,0,'edtf','Store 3, bay 5',NULL);
INSERT INTO object VALUES(13,'6e767b2e-65c4-500e-8419-1d0a0c714885','2026-11-02','SQ.1938.2','sq.0041938.0012','sq.1938.2','Bell of the brig Margery Dawes','bell of the brig margery dawes','ship''s bell in an oak headstock','unknown','1838','1838',670951,671315,0,'edtf','Gallery 1',NULL);
CREATE TABLE person (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	name TEXT NOT NULL, 
	name_folded TEXT NOT NULL, 
	role TEXT, 
	organisation TEXT, 
	active_words TEXT, 
	active_edtf TEXT, 
	active_earliest INTEGER NOT NULL, 
	active_latest INTEGER NOT NULL, 
	active_flags INTEGER NOT NULL, 
	active_derived TEXT NOT NULL, 
	note TEXT, 
	CONSTRAINT ck_person_active_in_order CHECK (active_earliest <= active_latest), 
	CONSTRAINT uq_person_name_folded UNIQUE (name_folded), 
	CONSTRAINT uq_person_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO person VALUES(1,'e5fa3089-112d-5bb3-b8e4-f269dd6acece','2026-11-02','Jerrold Haske','jerrold haske','sculptor and mason',NULL,'1728/1763','1728/1763',630774,643922,0,'edtf','Maker of The Four Winds.');
INSERT INTO person VALUES(2,'aba7fadc-f54b-5600-a452-d0d705d5f588','2026-11-02','Tobias Wend','tobias wend','bronze founder',NULL,'1735/1758','1735/1758',633331,642096,0,'edtf','Cast three masks and the spouts.');
INSERT INTO person VALUES(3,'6ed0828f-906f-59f9-a49e-80e03c87183b','2026-11-02','Abel Crane','abel crane','mason','Abel Crane & Son','1851/1883','1851/1883',675699,687751,0,'edtf','Sent the bill of 1868; his son did the setting.');
INSERT INTO person VALUES(4,'71760729-aabb-5279-a471-8b6526abfa4c','2026-11-02','Josiah Thurlby','josiah thurlby','estate steward','Ebbstone House','1859/','1859/',678621,8000000,0,'edtf','Wrote from memory, three years after the move.');
INSERT INTO person VALUES(5,'bb34ea94-6078-57d9-aeae-eeb5d68d1027','2026-11-02','Edwin Marrable','edwin marrable','carpenter and mender','Museum of Saltmarsh Quay','1884/1913','1884/1913',687752,698708,0,'edtf','Keeps a daybook; writes "glew" and "gum".');
INSERT INTO person VALUES(6,'0cef81f9-a6a5-543a-8b9f-6fdcaca47c1d','2026-11-02','Harriet Lisle','harriet lisle','china mender',NULL,'1889/1911','1889/1911',689579,697977,0,'edtf','Worked at home for the museum and for dealers.');
INSERT INTO person VALUES(7,'fcb39802-618c-57d4-9120-97bca279a5e1','2026-11-02','Walter Orde','walter orde','museum mason','Museum of Saltmarsh Quay','1926/1951','1926/1951',703092,712587,0,'edtf','Ledgers 1926 to 1938 survive.');
INSERT INTO person VALUES(8,'914b40cf-519a-5f49-ac24-05462ff0b30d','2026-11-02','Cuthbert Yarrow','cuthbert yarrow','attendant and mender','Museum of Saltmarsh Quay','1946/1962','1946/1962',710397,716605,0,'edtf','Wrote index cards in pencil.');
INSERT INTO person VALUES(9,'86ffbeda-1ae4-5829-a8e8-c1eea143fa57','2026-11-02','Dorothea Finch','dorothea finch','keeper','Museum of Saltmarsh Quay','1949/1971','1949/1971',711493,719892,0,'edtf',NULL);
INSERT INTO person VALUES(10,'f655da58-3211-5fb0-817a-f93f095455ef','2026-11-02','Ronald Tasker','ronald tasker','technician','Museum of Saltmarsh Quay','1961/1979','1961/1979',715876,722814,0,'edtf','Asked again in 1994, at eighty-one.');
INSERT INTO person VALUES(11,'a13544dd-1659-5fe8-8c76-0cfc852c4c4f','2026-11-02','Margit Hollander','margit hollander','conservator','Museum of Saltmarsh Quay','1974/1983','1974/1983',720624,724275,0,'edtf','First trained conservator of the house.');
INSERT INTO person VALUES(12,'388eadd6-fdf8-5b4e-9c45-4c9406765b8b','2026-11-02','Philip Garrod','philip garrod','stone conservator','Garrod, private practice','1982/1998','1982/1998',723546,729754,0,'edtf',NULL);
INSERT INTO person VALUES(13,'0a41d82f-b957-55e1-97f0-1d6a4550071f','2026-11-02','Sunniva Dale','sunniva dale','conservator, ceramics and glass','Museum of Saltmarsh Quay','1991/2016','1991/2016',726833,736329,0,'edtf',NULL);
INSERT INTO person VALUES(14,'2a43a73b-2bc7-5b1a-8ec5-e473cb3f232a','2026-11-02','Ines Calder','ines calder','senior conservator','Museum of Saltmarsh Quay','2006/..','2006/..',732312,9000000,0,'edtf',NULL);
INSERT INTO person VALUES(15,'3cbcd8a4-13ef-5546-b39a-5c165ccb065f','2026-11-02','Joss Pendry','joss pendry','conservation scientist','Museum of Saltmarsh Quay','2009/2021','2009/2021',733408,738155,0,'edtf','Radiography and infrared.');
INSERT INTO person VALUES(16,'67bb1403-06a5-5ac9-8e92-2f2f8ca1920d','2026-11-02','Tom Aldous','tom aldous','conservator, metals','Museum of Saltmarsh Quay','2010/..','2010/..',733773,9000000,0,'edtf',NULL);
INSERT INTO person VALUES(17,'e94758cf-a61f-588a-afb2-98747d729585','2026-11-02','Amara Whitlock','amara whitlock','head of objects conservation','Museum of Saltmarsh Quay','2018/..','2018/..',736695,9000000,0,'edtf',NULL);
INSERT INTO person VALUES(18,'0fd64d9d-b1f5-5548-85ac-cbe28d2e2172','2026-11-02','Leonie Strand','leonie strand','registrar','Museum of Saltmarsh Quay','2015/..','2015/..',735599,9000000,0,'edtf','Entered the old cards and ledgers from 2024 on.');
INSERT INTO person VALUES(19,'576f6225-27d8-54ae-a3b0-68d0d5f6ad58','2026-11-02','Bruno Castell','bruno castell','intern','Museum of Saltmarsh Quay','2025/2026','2025/2026',739252,739981,0,'edtf',NULL);
CREATE TABLE source (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	ref TEXT NOT NULL, 
	kind TEXT, 
	citation TEXT, 
	citation_folded TEXT, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	note TEXT, 
	CONSTRAINT ck_source_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT uq_source_ref UNIQUE (ref), 
	CONSTRAINT uq_source_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO source VALUES(1,'a58b01ec-32f7-560a-b460-c6024d07ff64','2026-11-02','OBJ','the object','Observed on the object itself','observed on the object itself',NULL,NULL,-8000000,8000000,0,'blank',NULL);
INSERT INTO source VALUES(2,'8a0aacec-432e-5447-8c6f-2fd8c520c96a','2026-11-02','ACC-1741','invoice','Articles and account of Jerrold Haske with Ebbstone House, 3 leaves','articles and account of jerrold haske with ebbstone house, 3 leaves','1741','1741',635523,635887,0,'edtf','Names trass, lead and "the mastick for the bason".');
INSERT INTO source VALUES(3,'a32defc3-4995-5289-8152-b91149e95195','2026-11-02','BILL-1868','invoice','Bill of Abel Crane & Son, masons, for taking down, carrying and setting a fountain','bill of abel crane & son, masons, for taking down, carrying and setting a fountain','1868-11-02','1868-11-02',682214,682214,0,'edtf','Receipted. No shellac on it.');
INSERT INTO source VALUES(4,'cb000eb3-caf9-50ca-b1ec-13bc4d5ca0d8','2026-11-02','LET-1871','letter','Josiah Thurlby, steward, to Mrs Honoria Amory, 4 pages','josiah thurlby, steward, to mrs honoria amory, 4 pages','1871-03-09','1871-03-09',683071,683071,0,'edtf','Copy in the gift file; the original is not found.');
INSERT INTO source VALUES(5,'295daac3-55f8-5a2e-ba89-e85c380293bb','2026-11-02','PHO-1896','photograph','Glass plate, the fountain on the Custom House terrace, from the left','glass plate, the fountain on the custom house terrace, from the left','1896~','1896~',692135,692500,2,'edtf','The right dolphin has no tail fin.');
INSERT INTO source VALUES(6,'c936d583-a619-558f-980b-30dc9cf0b5cf','2026-11-02','GIFT-1902','letter','Deed of gift of the fountain by the Amory heirs','deed of gift of the fountain by the amory heirs','1902-05-21','1902-05-21',694466,694466,0,'edtf',NULL);
INSERT INTO source VALUES(7,'9e012184-f3f8-5e88-b335-7375b7987b99','2026-11-02','PHO-1931','photograph','Three prints of the fountain before works','three prints of the fountain before works','1931','1931',704918,705282,0,'edtf',NULL);
INSERT INTO source VALUES(8,'3b8820da-ed8d-5538-b0c7-0287b43dfdbf','2026-11-02','LEDG-1934','report','Mason''s day ledger of the museum, pp. 39 to 44','mason''s day ledger of the museum, pp. 39 to 44','1934','1934',706014,706378,0,'edtf','Hand of Walter Orde.');
INSERT INTO source VALUES(9,'35554dd0-cecd-55b4-94a6-6d52ec646a75','2026-11-02','PHO-1947','photograph','Press print, children at the fountain','press print, children at the fountain','1947-08','1947-08',710974,711004,0,'edtf',NULL);
INSERT INTO source VALUES(10,'6a723abe-dcd6-5b91-a7eb-c162b69a310e','2026-11-02','PHO-1957','photograph','Negatives taken before the move indoors','negatives taken before the move indoors','1957-09','1957-09',714658,714687,0,'edtf',NULL);
INSERT INTO source VALUES(11,'19cb8a7b-1257-587f-ba26-c2be61b9c1e5','2026-11-02','CARD-1958','card','Index card, "Wall fountain, moved", pencil, both sides','index card, "wall fountain, moved", pencil, both sides','1958-05','1958-05',714900,714930,0,'edtf',NULL);
INSERT INTO source VALUES(12,'dfe7d80e-c93a-55dd-a25e-27c348c42af1','2026-11-02','CARD-1967','card','Index card, "Fountain lip mended"','index card, "fountain lip mended"','1967','1967',718067,718431,0,'edtf',NULL);
INSERT INTO source VALUES(13,'dc89eab2-aa53-5554-9a9d-21d6988ec114','2026-11-02','CARD-1976','card','Treatment card 76/31, fountain lip','treatment card 76/31, fountain lip','1976-10','1976-10',721628,721658,0,'edtf','Gives the consolidant as "silane".');
INSERT INTO source VALUES(14,'b9ee0c70-6bb9-574e-b8db-8230dbd09ee2','2026-11-02','INV-1976','invoice','Supplier''s invoice, 5 litres acrylic resin in toluene, 20 %','supplier''s invoice, 5 litres acrylic resin in toluene, 20 %','1976-08-17','1976-08-17',721583,721583,0,'edtf','Filed under the fountain; no silane was bought in that year.');
INSERT INTO source VALUES(15,'9be69b24-0994-57fe-a9fe-74cbe812ffdf','2026-11-02','REP-1989','report','Report on the structural treatment of the fountain, 24 pp.','report on the structural treatment of the fountain, 24 pp.','1989-07','1989-07',726284,726314,0,'edtf',NULL);
INSERT INTO source VALUES(16,'e71f75eb-a7f1-569d-8b53-df15da752223','2026-11-02','ORAL-1994','oral','Conversation with Ronald Tasker, noted by Sunniva Dale','conversation with ronald tasker, noted by sunniva dale','1994-11-08','1994-11-08',728240,728240,0,'edtf',NULL);
INSERT INTO source VALUES(17,'c9cadd03-726a-535f-a3b1-1cac5d45ef1e','2026-11-02','RAD-2011','radiograph','Radiographs, plates 1 to 14','radiographs, plates 1 to 14','2011-10-04','2011-10-04',734414,734414,0,'edtf',NULL);
INSERT INTO source VALUES(18,'649f878a-54fb-5668-9c02-c2eca6556ab1','2026-11-02','REP-2012','report','Report on the treatment of 2011 to 2012, with test sheets','report on the treatment of 2011 to 2012, with test sheets','2012-11-30','2012-11-30',734837,734837,0,'edtf',NULL);
INSERT INTO source VALUES(19,'bbc31dbc-3ddf-5494-838d-3f304b9b80bc','2026-11-02','LET-2013','letter','Philip Garrod to Ines Calder','philip garrod to ines calder','2013-02-04','2013-02-04',734903,734903,0,'edtf','Answers her question about the barrier of 1989.');
INSERT INTO source VALUES(20,'d97d42f2-9d01-5ec4-a5c5-d175bd85e785','2026-11-02','NOTE-2019','report','Note on the crack gauge at the right dolphin','note on the crack gauge at the right dolphin','2019-06-12','2019-06-12',737222,737222,0,'edtf',NULL);
INSERT INTO source VALUES(21,'7188d681-aba9-50a6-993f-8ddc9b69ac56','2026-11-02','GAUGE-2024','report','Crack gauge sheets, June 2019 to April 2024','crack gauge sheets, june 2019 to april 2024','2024-04-30','2024-04-30',739006,739006,0,'edtf',NULL);
INSERT INTO source VALUES(22,'80df6c30-64bf-5f67-b022-0a5644fb3061','2026-11-02','REP-2026','report','Condition survey before the move','condition survey before the move','2026-09-18','2026-09-18',739877,739877,0,'edtf',NULL);
INSERT INTO source VALUES(23,'1f8ded5e-f664-55ea-b4fb-fcdb46086042','2026-11-02','DAYB','report','Daybook of Edwin Marrable, four volumes','daybook of edwin marrable, four volumes','1884/1913','1884/1913',687752,698708,0,'edtf','Spelling his own.');
INSERT INTO source VALUES(24,'e055d7af-8d6c-5fa8-a249-75a365f51bed','2026-11-02','LISLE-1891','invoice','Account of Miss Lisle for mending the great vase','account of miss lisle for mending the great vase','1891-10-06','1891-10-06',690587,690587,0,'edtf','"20 pieces, 1 wanting, 3 rivets."');
INSERT INTO source VALUES(25,'931d9bf3-76bf-5d4f-a0ef-33ba90e4a9c7','2026-11-02','PHO-1890','photograph','Print of the sherds laid out on a cloth, numbered','print of the sherds laid out on a cloth, numbered','1890','1890',689944,690308,0,'edtf','Shows a rim sherd that is not there today.');
INSERT INTO source VALUES(26,'9dde08ae-b392-51d2-8ef8-f0ace6bc7508','2026-11-02','LEDG-36','report','Mason''s day ledger, entries for other objects','mason''s day ledger, entries for other objects','1926/1938','1926/1938',703092,707839,0,'edtf','Hand of Walter Orde.');
INSERT INTO source VALUES(27,'30860e8e-0551-5f60-9195-a1eb83dd1fed','2026-11-02','PEST-1921','report','List of wooden objects treated against worm, typescript','list of wooden objects treated against worm, typescript','1921-06','1921-06',701417,701446,0,'edtf','Names mercury and paraffin.');
INSERT INTO source VALUES(28,'5c93a194-cfbd-55b8-b7cc-b56d96f89da8','2026-11-02','CARD-YAR','card','Cards of Cuthbert Yarrow, box B','cards of cuthbert yarrow, box b','1946/1962','1946/1962',710397,716605,0,'edtf','Pencil, some washed out.');
INSERT INTO source VALUES(29,'89774e44-089d-5b0d-abd6-a31a7fdc8d90','2026-11-02','CARD-TAS','card','Cards of Ronald Tasker, box C','cards of ronald tasker, box c','1961/1979','1961/1979',715876,722814,0,'edtf',NULL);
INSERT INTO source VALUES(30,'4d58830a-983d-521f-b069-a6dcc094d31c','2026-11-02','CARD-HOL','card','Treatment cards of Margit Hollander','treatment cards of margit hollander','1974/1983','1974/1983',720624,724275,0,'edtf',NULL);
INSERT INTO source VALUES(31,'8be76874-b129-597f-8a33-901a4d6b8a7f','2026-11-02','FILE-1985','report','Contract file of Philip Garrod, tablet and panel','contract file of philip garrod, tablet and panel','1985/1988','1985/1988',724642,726102,0,'edtf',NULL);
INSERT INTO source VALUES(32,'33927c10-c755-5788-81ba-b54adb0159d1','2026-11-02','REP-1994','report','Report on the regatta cup','report on the regatta cup','1994-03','1994-03',727988,728018,0,'edtf',NULL);
INSERT INTO source VALUES(33,'d3bc99fe-2463-5aef-b7f0-d86178cd313b','2026-11-02','REP-1996','report','Report on the great vase, with map of the joins','report on the great vase, with map of the joins','1996-12','1996-12',728994,729024,0,'edtf',NULL);
INSERT INTO source VALUES(34,'9eca98ff-cc82-510b-adc7-befec11a0920','2026-11-02','REP-1998','report','Report on the launching goblet','report on the launching goblet','1998-05','1998-05',729510,729540,0,'edtf',NULL);
INSERT INTO source VALUES(35,'02996103-0481-589f-b9de-51fbc9133f0f','2026-11-02','REP-2003','report','Report on The Net Mender','report on the net mender','2003-09','2003-09',731459,731488,0,'edtf',NULL);
INSERT INTO source VALUES(36,'c6409ede-e58c-557a-bcb2-2a411d9c6f92','2026-11-02','REP-2008','report','Report on the regatta cup, second treatment','report on the regatta cup, second treatment','2008-11','2008-11',733347,733376,0,'edtf',NULL);
INSERT INTO source VALUES(37,'d4d4b389-c010-5142-9eee-616f5e8fd027','2026-11-02','NIT-2013','report','Infrared survey of joins for cellulose nitrate','infrared survey of joins for cellulose nitrate','2013-05-17','2013-05-17',735005,735005,0,'edtf','96 joins on 31 objects.');
INSERT INTO source VALUES(38,'d77bacc0-b4aa-5a56-a618-789df0b5c427','2026-11-02','REP-2014','report','Report on the figurehead','report on the figurehead','2014-10','2014-10',735507,735537,0,'edtf',NULL);
INSERT INTO source VALUES(39,'247d1fc8-f6c1-5980-82f3-69bd21d3d405','2026-11-02','XRF-2015','report','Surface analysis of wooden objects for mercury and arsenic','surface analysis of wooden objects for mercury and arsenic','2015-02-26','2015-02-26',735655,735655,0,'edtf',NULL);
INSERT INTO source VALUES(40,'fe0b12ab-5f1f-5c64-bd21-697f187de355','2026-11-02','REP-2018','report','Report on the bust of a harbour master','report on the bust of a harbour master','2018-07','2018-07',736876,736906,0,'edtf',NULL);
INSERT INTO source VALUES(41,'1d323e83-28d4-5902-8f6c-032b178c17a6','2026-11-02','REP-2021','report','Report on the ship''s bell and the lantern','report on the ship''s bell and the lantern','2021-11','2021-11',738095,738124,0,'edtf',NULL);
INSERT INTO source VALUES(42,'faab79db-8917-5856-a36a-4ec936c69809','2026-11-02','REP-2025','report','Condition survey of gallery 4','condition survey of gallery 4','2025-04','2025-04',739342,739371,0,'edtf',NULL);
INSERT INTO source VALUES(43,'6e4ad6ed-1e7c-58cb-906b-7e470c534989','2026-11-02','DAY-2026','report','Day sheets of the studio','day sheets of the studio','2026','2026',739617,739981,0,'edtf',NULL);
INSERT INTO source VALUES(44,'732d1589-7be6-5161-b852-806ee7d33796','2026-11-02','REP-1992','report','Report on the dish with a mermaid','report on the dish with a mermaid','1992-05','1992-05',727319,727349,0,'edtf',NULL);
CREATE TABLE term (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	list TEXT NOT NULL, 
	term TEXT NOT NULL, 
	definition TEXT, 
	thesaurus TEXT, 
	thesaurus_id TEXT, 
	checked_by TEXT, 
	note TEXT, 
	CONSTRAINT uq_term_list_term UNIQUE (list, term), 
	CONSTRAINT uq_term_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO term VALUES(1,'3017cacc-59f4-5751-b317-064a30f12252','2026-11-02','technique','consolidation','putting a binder into weak matter so that it holds','AAT','300219960',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(2,'31b7b686-733e-5c4e-8215-29a1d2bd3ea0','2026-11-02','technique','filling','replacing lost volume with another material','AAT','300053092',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(3,'920c4778-fb27-5113-ac6d-2c6cd8f3607a','2026-11-02','technique','inpainting','colour only inside the loss or fill','AAT','300053723',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(4,'dab3a1d4-f3e0-56ff-b08f-886c39e0e48c','2026-11-02','technique','dry cleaning','cleaning without a bath or flow of water','AAT','300219637',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(5,'e8e5cd34-590c-5e98-a433-f67b0df412b3','2026-11-02','technique','poulticing','drawing soluble matter into a wet absorbent pack','AAT','300053041',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(6,'49a3d175-5491-5724-b153-2ca47960259b','2026-11-02','technique','desalination','lowering the content of soluble salts','AAT','300053754',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(7,'88ec2d7d-38d8-5a37-a506-3113ee6e574a','2026-11-02','technique','doweling','joining by a rod in matched holes','AAT','300186243',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(8,'629dba21-87c5-5b9b-b29b-a85bf38ad6ee','2026-11-02','technique','pinning','joining by a thin rod in matched holes','AAT','300053018',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(9,'f81c6ee7-50b1-5eed-a618-0c4594a40df4','2026-11-02','technique','reassembling','putting fragments back as one','AAT','300379615',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(10,'99704c73-13b0-5a64-8eee-0f407cd1ec1f','2026-11-02','technique','disassembling','taking apart at existing joints','AAT','300404064',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(11,'c97fd785-e537-50d6-927f-529ea6f7f89b','2026-11-02','technique','waxing','adding a film of wax','AAT','300380039',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(12,'25cc21d2-0603-5da9-857d-a225cbdedc97','2026-11-02','technique','grouting','pouring a fill into a void behind or in a joint','AAT','300053093',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(13,'087cd67b-4a6b-5f26-a8e1-91205e87bc24','2026-11-02','condition','efflorescence','salt crystals on the surface','AAT','300214748',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
INSERT INTO term VALUES(14,'05901ada-a377-5f62-98d8-cedb62c22139','2026-11-02','condition','bronze disease','cyclic chloride corrosion of copper alloy','AAT','300220720',NULL,'Id from the Getty Art & Architecture Thesaurus extract of 2023-10-18 (ODC-By).');
CREATE TABLE material (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	"key" TEXT NOT NULL, 
	name TEXT, 
	name_folded TEXT, 
	class_id INTEGER, 
	note TEXT, 
	CONSTRAINT fk_material_class_id FOREIGN KEY(class_id) REFERENCES material_class (id), 
	CONSTRAINT uq_material_key UNIQUE ("key"), 
	CONSTRAINT uq_material_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO material VALUES(1,'3b33920a-eccc-5820-9fba-7f14a5c98586','2026-11-02','limestone','oolitic limestone','oolitic limestone',3,'Fine grained, about 18 % open pores by weight of water taken up.');
INSERT INTO material VALUES(2,'4d6107df-ab25-51ee-a594-4a995a96974f','2026-11-02','marble','marble','marble',3,NULL);
INSERT INTO material VALUES(3,'c17c4f84-8d9b-53b5-8906-46f219006107','2026-11-02','alabaster','gypsum alabaster','gypsum alabaster',2,'Slightly soluble in water.');
INSERT INTO material VALUES(4,'f747362c-5dfd-523a-9c7a-d5624b206d42','2026-11-02','bronze','bronze','bronze',5,NULL);
INSERT INTO material VALUES(5,'63b4d92f-9710-55d3-a30c-c7aae3586c76','2026-11-02','brass','brass','brass',5,NULL);
INSERT INTO material VALUES(6,'91a08533-0f8f-5b2f-9d54-40c296b1ee4e','2026-11-02','copper','copper','copper',5,NULL);
INSERT INTO material VALUES(7,'cd2c2f59-2194-5fa7-88ec-782502714405','2026-11-02','silver','silver','silver',4,NULL);
INSERT INTO material VALUES(8,'9d6c9655-f6c0-5184-8ee0-48013c280ce7','2026-11-02','pewter','pewter','pewter',4,NULL);
INSERT INTO material VALUES(9,'9d3c17e7-de09-5cb3-8a3e-90628f2fcc34','2026-11-02','tinplate','tinned iron sheet','tinned iron sheet',4,NULL);
INSERT INTO material VALUES(10,'90369295-87fd-5936-8d08-776dddc3f125','2026-11-02','iron','wrought iron','wrought iron',6,NULL);
INSERT INTO material VALUES(11,'762c0319-45b7-5ea9-9f2d-eb00263973d4','2026-11-02','cast-iron','cast iron','cast iron',6,NULL);
INSERT INTO material VALUES(12,'2ba4794a-506f-5cc3-bb07-754f5debd3e3','2026-11-02','mild-steel','mild steel','mild steel',6,NULL);
INSERT INTO material VALUES(13,'339e608d-e533-53dd-9002-6eb345bf22dd','2026-11-02','stainless-steel','austenitic stainless steel','austenitic stainless steel',6,NULL);
INSERT INTO material VALUES(14,'5f364845-c02d-5589-af65-d4a22c47bfe2','2026-11-02','lead','lead','lead',4,NULL);
INSERT INTO material VALUES(15,'36bfe9e4-a79c-5c49-87cb-251a604dffc1','2026-11-02','earthenware','earthenware','earthenware',7,NULL);
INSERT INTO material VALUES(16,'9728fd22-8c4d-5d83-a5a0-30f00f6f5897','2026-11-02','slipware','lead-glazed slipware','lead-glazed slipware',7,NULL);
INSERT INTO material VALUES(17,'f07f77de-923e-5691-839e-75008c1401ef','2026-11-02','stoneware','salt-glazed stoneware','salt-glazed stoneware',7,NULL);
INSERT INTO material VALUES(18,'9728e06a-f9a2-5ddf-9738-aa571ffec12e','2026-11-02','porcelain','porcelain','porcelain',7,NULL);
INSERT INTO material VALUES(19,'248fb382-3203-5f28-a4da-d1d3615b186f','2026-11-02','terracotta','terracotta','terracotta',7,NULL);
INSERT INTO material VALUES(20,'ba9db3d0-1a8e-58a0-93c7-e837285ca8bc','2026-11-02','oak','oak','oak',8,NULL);
INSERT INTO material VALUES(21,'e9a5bf33-da65-590c-ab02-a07d315c69a8','2026-11-02','lime-wood','limewood','limewood',8,NULL);
INSERT INTO material VALUES(22,'9b5419db-f337-5510-a6e2-51579d3abf9e','2026-11-02','mahogany','mahogany','mahogany',8,NULL);
INSERT INTO material VALUES(23,'2df495a5-6ede-5e6f-8487-927b424e3771','2026-11-02','pine','pine','pine',8,NULL);
INSERT INTO material VALUES(24,'623cb230-2bd7-5a7b-8365-41bfd859f915','2026-11-02','soda-glass','soda-lime glass','soda-lime glass',9,NULL);
INSERT INTO material VALUES(25,'3592ae02-405f-5fef-ba66-cd33fef53017','2026-11-02','lead-glass','lead glass','lead glass',9,NULL);
INSERT INTO material VALUES(26,'b8e02613-21fe-565f-bac6-019cdf4ce15b','2026-11-02','plaster-cast','gypsum plaster, cast body','gypsum plaster, cast body',10,'Slightly soluble in water.');
INSERT INTO material VALUES(27,'36511ebf-68a3-59b1-877c-166adddbddc8','2026-11-02','leather','leather','leather',11,NULL);
INSERT INTO material VALUES(28,'aeb2f976-9217-5945-97d4-ee625f90f023','2026-11-02','cork','cork','cork',11,NULL);
INSERT INTO material VALUES(29,'de9b3059-ba9f-5a4d-b58f-2727a859f4e5','2026-11-02','trass-lime','trass-lime mortar','trass-lime mortar',13,'Strong, water-resisting; sets under water.');
INSERT INTO material VALUES(30,'81dc415e-a865-54e6-9d64-44af47469a4d','2026-11-02','trass','trass','trass',39,NULL);
INSERT INTO material VALUES(31,'495d8ef3-43d5-553a-9f3b-45bb83bcf9db','2026-11-02','lime','slaked lime','slaked lime',13,NULL);
INSERT INTO material VALUES(32,'cb333a89-f030-5652-b87c-f6c356ee653e','2026-11-02','lime-mortar','lime mortar','lime mortar',13,NULL);
INSERT INTO material VALUES(33,'86b26437-5cb8-580f-b774-ba530d128f6c','2026-11-02','sand','quartz sand','quartz sand',39,NULL);
INSERT INTO material VALUES(34,'13c3b29e-725c-5240-919e-3e3604a59458','2026-11-02','roman-cement','Roman cement mortar','roman cement mortar',14,'Brown, quick setting natural cement.');
INSERT INTO material VALUES(35,'b6285195-abfd-5dc7-82ee-e71970d2e30f','2026-11-02','portland-cement','Portland cement mortar','portland cement mortar',14,'Harder than the stone; brings alkali salts.');
INSERT INTO material VALUES(36,'511e12ca-0789-5793-a833-3644fa818296','2026-11-02','gypsum-plaster','gypsum plaster','gypsum plaster',15,'Fill and bedding.');
INSERT INTO material VALUES(37,'c5caf25d-beed-5849-b00f-74f39bd7fde0','2026-11-02','stucco-marble','gypsum plaster with glue size','gypsum plaster with glue size',15,NULL);
INSERT INTO material VALUES(38,'cc4683e1-6c02-51c4-92fb-bb9f7a020474','2026-11-02','sulphur','sulphur, melted','sulphur, melted',16,'Feeds rust when damp.');
INSERT INTO material VALUES(39,'3b3286b8-8f75-5c25-8455-1bd341ae92df','2026-11-02','lead-run','lead, run in molten','lead, run in molten',16,NULL);
INSERT INTO material VALUES(40,'b522e1fe-3dbc-5cb8-be48-76376f378f41','2026-11-02','soft-solder','soft solder (tin and lead)','soft solder (tin and lead)',16,NULL);
INSERT INTO material VALUES(41,'c64b99b2-c9a2-598e-a64c-f2ab87941b37','2026-11-02','oil-mastic','oil mastic','oil mastic',35,'Linseed oil, lead white and chalk or brick dust.');
INSERT INTO material VALUES(42,'f22abe0c-cadf-54f6-a91a-ff3313b7464a','2026-11-02','red-lead-mastic','red lead mastic','red lead mastic',35,NULL);
INSERT INTO material VALUES(43,'dc6e260a-c98f-5f6b-91c0-10c96f617c86','2026-11-02','linseed-oil','linseed oil','linseed oil',35,NULL);
INSERT INTO material VALUES(44,'22667251-9cb5-5f65-8678-c5ec734874b2','2026-11-02','oil-paint','oil paint','oil paint',35,NULL);
INSERT INTO material VALUES(45,'908ba921-1d53-52a2-b0a6-d8207620b368','2026-11-02','linseed-putty','linseed oil putty','linseed oil putty',35,NULL);
INSERT INTO material VALUES(46,'cafa7b73-3c60-5ea7-9407-6f427069cb10','2026-11-02','bitumen','bitumen','bitumen',36,NULL);
INSERT INTO material VALUES(47,'ae457502-87ae-5104-a617-1dcc15920e99','2026-11-02','lamp-black','lamp black','lamp black',39,NULL);
INSERT INTO material VALUES(48,'6d10674d-1fdc-5775-9a7b-e120dc79bf4f','2026-11-02','shellac','shellac','shellac',29,'Alcohol solution, or melted stick.');
INSERT INTO material VALUES(49,'c603b917-9d3d-5e2d-a618-cc58f2892382','2026-11-02','colophony','colophony','colophony',29,NULL);
INSERT INTO material VALUES(50,'4de2c096-8272-569c-9cdf-5db332072aff','2026-11-02','dammar','dammar resin','dammar resin',29,NULL);
INSERT INTO material VALUES(51,'1b74f3ac-4a69-53ce-84c9-4345bdf99b2a','2026-11-02','mastic-resin','mastic resin','mastic resin',29,NULL);
INSERT INTO material VALUES(52,'96ec6e7b-415e-51fe-91f4-2697c904cf36','2026-11-02','colophony-wax','colophony and beeswax mixture','colophony and beeswax mixture',29,NULL);
INSERT INTO material VALUES(53,'698c95e8-ca3e-553b-9432-0561d2a76d9b','2026-11-02','animal-glue','animal glue','animal glue',30,NULL);
INSERT INTO material VALUES(54,'41479b05-810f-59eb-8087-6ad83d9b4a05','2026-11-02','fish-glue','fish glue','fish glue',30,NULL);
INSERT INTO material VALUES(55,'57550afc-c3e5-5fed-a0b1-74dbb522030e','2026-11-02','casein','casein glue','casein glue',30,NULL);
INSERT INTO material VALUES(56,'13006d9a-f0cd-5d81-a4e0-fd70bc37b0bb','2026-11-02','gelatine','gelatine','gelatine',30,NULL);
INSERT INTO material VALUES(57,'3fb65b84-ed96-5a85-bd5e-e562d0591246','2026-11-02','gum-arabic','gum arabic','gum arabic',31,NULL);
INSERT INTO material VALUES(58,'dc6c1572-8417-5ed1-94bc-a283d0e47f6f','2026-11-02','starch','wheat starch paste','wheat starch paste',31,NULL);
INSERT INTO material VALUES(59,'cbe677de-a1b9-56b9-a6a3-4146b708aa17','2026-11-02','mc','methyl cellulose','methyl cellulose',32,NULL);
INSERT INTO material VALUES(60,'16a1d11f-a208-510f-a906-57d5335b2b75','2026-11-02','hpc','hydroxypropyl cellulose','hydroxypropyl cellulose',32,NULL);
INSERT INTO material VALUES(61,'0da10925-2c99-52f9-b6f0-0cb750c4b074','2026-11-02','cn','cellulose nitrate','cellulose nitrate',20,'Sheds nitrogen oxides as it ages.');
INSERT INTO material VALUES(62,'b16fe7a2-6c5e-5e03-babe-d2c8866a0133','2026-11-02','cellulose-acetate','cellulose acetate','cellulose acetate',20,NULL);
INSERT INTO material VALUES(63,'c231701b-1b7a-5504-bb3a-75986fa14fc2','2026-11-02','b72','acrylic resin (ethyl methacrylate copolymer)','acrylic resin (ethyl methacrylate copolymer)',18,NULL);
INSERT INTO material VALUES(64,'7157bbf2-c9dc-5371-a9a8-a3cae4af73b9','2026-11-02','b44','acrylic resin (methyl methacrylate copolymer)','acrylic resin (methyl methacrylate copolymer)',18,NULL);
INSERT INTO material VALUES(65,'c1fb51c2-abb2-596d-8ad9-7d0bfbe8fa9a','2026-11-02','b67','acrylic resin (isobutyl methacrylate)','acrylic resin (isobutyl methacrylate)',18,NULL);
INSERT INTO material VALUES(66,'f56e40cf-d2d2-567f-8b52-b91cc71d6efe','2026-11-02','pnbma','acrylic resin (n-butyl methacrylate)','acrylic resin (n-butyl methacrylate)',18,'Yellows and grows less soluble in light.');
INSERT INTO material VALUES(67,'54890af4-3d5a-5c74-b535-f59e364b0887','2026-11-02','acrylic-dispersion','acrylic dispersion','acrylic dispersion',18,NULL);
INSERT INTO material VALUES(68,'2ef8e37d-72bc-5816-a608-6018ec9aa261','2026-11-02','pvac','poly(vinyl acetate), solution','poly(vinyl acetate), solution',19,NULL);
INSERT INTO material VALUES(69,'f5dc77b7-7a8f-5d44-96da-3d819817e339','2026-11-02','pvac-emulsion','poly(vinyl acetate) dispersion','poly(vinyl acetate) dispersion',19,NULL);
INSERT INTO material VALUES(70,'45d6569d-8e7e-584b-a479-83627281c3cf','2026-11-02','pvb','poly(vinyl butyral)','poly(vinyl butyral)',19,NULL);
INSERT INTO material VALUES(71,'bdd6888d-d0c3-5165-949f-4e95f239bfc6','2026-11-02','pval','poly(vinyl alcohol)','poly(vinyl alcohol)',19,NULL);
INSERT INTO material VALUES(72,'5542b29c-32ba-56a6-80e8-258bd89617bf','2026-11-02','soluble-nylon','N-methoxymethyl nylon','n-methoxymethyl nylon',17,'Brittle and insoluble with age.');
INSERT INTO material VALUES(73,'21d18e14-75d1-577d-b12a-e2b2f31a535d','2026-11-02','k80','cyclohexanone resin','cyclohexanone resin',21,NULL);
INSERT INTO material VALUES(74,'055e499a-d7b2-5129-8915-ecc09662d35b','2026-11-02','eva-heat-seal','ethylene-vinyl acetate heat-seal adhesive','ethylene-vinyl acetate heat-seal adhesive',22,NULL);
INSERT INTO material VALUES(75,'5bd636ec-a1e8-5cae-a51c-f3d2a24ec253','2026-11-02','epoxy','epoxy resin, amine cured','epoxy resin, amine cured',24,NULL);
INSERT INTO material VALUES(76,'b747e985-b362-57bb-869e-a1add37e2c12','2026-11-02','epoxy-optical','epoxy resin, water-clear','epoxy resin, water-clear',24,NULL);
INSERT INTO material VALUES(77,'75a58f31-0df8-5736-a33c-8c4700160c4f','2026-11-02','epoxy-silica','epoxy resin bulked with fumed silica','epoxy resin bulked with fumed silica',24,NULL);
INSERT INTO material VALUES(78,'353b97a5-f129-5670-a32b-2ec5f2d00076','2026-11-02','polyester','unsaturated polyester resin, styrene cross-linked','unsaturated polyester resin, styrene cross-linked',25,NULL);
INSERT INTO material VALUES(79,'b168716c-9134-54fd-b745-668af8aedb01','2026-11-02','polyester-stone','polyester filler with marble powder','polyester filler with marble powder',25,NULL);
INSERT INTO material VALUES(80,'247647e1-bd6b-5a65-9b54-d4bd1d861841','2026-11-02','cyano','ethyl cyanoacrylate','ethyl cyanoacrylate',26,NULL);
INSERT INTO material VALUES(81,'5864caac-47cc-52d2-937a-885445bb1c59','2026-11-02','silicone-rubber','silicone rubber','silicone rubber',27,NULL);
INSERT INTO material VALUES(82,'d16c06b2-1274-55e8-bb23-65ad41b99e71','2026-11-02','ethyl-silicate','ethyl silicate consolidant','ethyl silicate consolidant',28,NULL);
INSERT INTO material VALUES(83,'acf88b3d-6477-57a5-8e94-2d6616437cd0','2026-11-02','methyl-silane','methyltrimethoxysilane','methyltrimethoxysilane',28,NULL);
INSERT INTO material VALUES(84,'ea359a61-93d1-567d-8aab-4caaa5a12dba','2026-11-02','beeswax','beeswax','beeswax',33,NULL);
INSERT INTO material VALUES(85,'cb375ed3-832e-52de-bcf9-10e95bb4cfb7','2026-11-02','mcwax','microcrystalline wax','microcrystalline wax',33,NULL);
INSERT INTO material VALUES(86,'2936f33e-9369-51bc-a3a9-f4a611add741','2026-11-02','paraffin','paraffin wax','paraffin wax',33,NULL);
INSERT INTO material VALUES(87,'7377cb89-9768-5182-8715-61cf5b9ce6a6','2026-11-02','wax-polish','wax polish (beeswax and turpentine)','wax polish (beeswax and turpentine)',33,NULL);
INSERT INTO material VALUES(88,'76895dbd-ac80-51e0-8fd5-c5a82036c531','2026-11-02','cdd','cyclododecane','cyclododecane',34,'Goes off as vapour.');
INSERT INTO material VALUES(89,'b72152c1-8f7d-5add-a50d-59c99122cf15','2026-11-02','acrylic-fill','acrylic resin bulked with limestone powder','acrylic resin bulked with limestone powder',18,NULL);
INSERT INTO material VALUES(90,'eb44cdb3-195a-52cd-b61b-d2b6efdc0a36','2026-11-02','acrylic-balloon-fill','acrylic dispersion with glass balloons','acrylic dispersion with glass balloons',18,NULL);
INSERT INTO material VALUES(91,'89008cfd-1bf5-54c4-a45f-b15c779d1fd3','2026-11-02','acrylic-paint','acrylic dispersion paint','acrylic dispersion paint',37,NULL);
INSERT INTO material VALUES(92,'9a36e85b-e0cf-5d27-81d7-0c62364607a7','2026-11-02','watercolour','watercolour','watercolour',37,NULL);
INSERT INTO material VALUES(93,'4e74344a-13a5-5ba4-8866-43eb34c4b860','2026-11-02','dry-pigment','dry pigment','dry pigment',39,NULL);
INSERT INTO material VALUES(94,'93effe33-7be8-5657-a21f-7413876b5c85','2026-11-02','bronze-powder','bronze powder','bronze powder',39,NULL);
INSERT INTO material VALUES(95,'53b779c3-6e57-5e97-a054-5ed17ea2c8bf','2026-11-02','limestone-powder','limestone powder','limestone powder',39,NULL);
INSERT INTO material VALUES(96,'8f6d5e5e-f175-55db-a230-5f1eec0b1084','2026-11-02','marble-powder','marble powder','marble powder',39,NULL);
INSERT INTO material VALUES(97,'96c082b7-3072-5833-9acc-3933c191bcab','2026-11-02','chalk','chalk','chalk',39,NULL);
INSERT INTO material VALUES(98,'6a0b41ef-605a-5a2d-a0f0-fe3ec1eafca4','2026-11-02','brick-dust','brick dust','brick dust',39,NULL);
INSERT INTO material VALUES(99,'ecadf038-c21b-5f8e-86fd-fb681b01d804','2026-11-02','lead-white','lead white','lead white',39,NULL);
INSERT INTO material VALUES(100,'bbe0c55a-f279-5fed-b065-81e8ba6decab','2026-11-02','red-lead','red lead','red lead',39,NULL);
INSERT INTO material VALUES(101,'d6bf5cba-ee44-577a-9166-84628fb21c51','2026-11-02','fumed-silica','fumed silica','fumed silica',39,NULL);
INSERT INTO material VALUES(102,'e5dd8c96-422a-510e-859f-dda25b3898a9','2026-11-02','glass-balloons','hollow glass microspheres','hollow glass microspheres',39,NULL);
INSERT INTO material VALUES(103,'32587fce-8063-573d-bcdd-2c9844118ce9','2026-11-02','gold-leaf','gold leaf','gold leaf',38,NULL);
INSERT INTO material VALUES(104,'d4f98210-b340-5c35-8ae8-356fa9513312','2026-11-02','gilding-size','oil gold size','oil gold size',35,NULL);
INSERT INTO material VALUES(105,'5fb0a4fa-b341-55c1-a468-69a56f09e8c5','2026-11-02','tissue','long-fibre paper tissue','long-fibre paper tissue',40,NULL);
INSERT INTO material VALUES(106,'8fa0182a-22e1-5dec-8411-94070490b598','2026-11-02','linen','linen cloth','linen cloth',40,NULL);
INSERT INTO material VALUES(107,'bfd5da65-4bf6-5a2c-8a43-4ed57e113f8e','2026-11-02','cotton-gauze','cotton gauze','cotton gauze',40,NULL);
INSERT INTO material VALUES(108,'16109548-bde7-5e93-aa6a-73e6fb52efb1','2026-11-02','casting-core','casting core of clay and hair','casting core of clay and hair',46,NULL);
INSERT INTO material VALUES(109,'38977f70-3067-54c6-abd1-d4fa1dc5e63e','2026-11-02','limescale','limescale','limescale',42,NULL);
INSERT INTO material VALUES(110,'5bc2ea61-8c9e-5b5a-9fa4-4af36a090338','2026-11-02','black-crust','black gypsum crust','black gypsum crust',42,NULL);
INSERT INTO material VALUES(111,'c55fa7f5-84c1-51a2-a685-75916c5351a9','2026-11-02','rust','iron rust','iron rust',43,NULL);
INSERT INTO material VALUES(112,'1b1f03cf-b8c3-5c08-9b27-2f1041a63800','2026-11-02','copper-corrosion','green copper corrosion','green copper corrosion',43,NULL);
INSERT INTO material VALUES(113,'3c59bcd8-a302-5bba-8fed-40e7e0586e5a','2026-11-02','copper-chloride','pale green copper chloride corrosion','pale green copper chloride corrosion',43,NULL);
INSERT INTO material VALUES(114,'013ee2e9-0714-5495-85fb-56890d95decc','2026-11-02','lead-carbonate','white lead corrosion','white lead corrosion',43,NULL);
INSERT INTO material VALUES(115,'b90ca846-0d73-5d97-b38c-7f26bd4ff38d','2026-11-02','silver-sulphide','silver tarnish','silver tarnish',43,NULL);
INSERT INTO material VALUES(116,'10321ee5-de7d-5489-b4e8-921cef5448fc','2026-11-02','alkali-sulphate','sodium sulphate and carbonate salts','sodium sulphate and carbonate salts',44,NULL);
INSERT INTO material VALUES(117,'5ae0de98-d094-5d5d-b72f-1cf1493a2a80','2026-11-02','chloride-salt','sodium chloride','sodium chloride',44,NULL);
INSERT INTO material VALUES(118,'4b113b9f-c78a-5984-a7ee-af1abf025587','2026-11-02','calcium-formate-salt','acetate and formate salts of calcium','acetate and formate salts of calcium',44,NULL);
INSERT INTO material VALUES(119,'8064c49a-de2f-5eef-a7f9-18b4b5a0a807','2026-11-02','alga','alga and lichen','alga and lichen',45,NULL);
INSERT INTO material VALUES(120,'616e8d7e-f7da-58e2-bde8-1fab4d159fc8','2026-11-02','mould','mould','mould',45,NULL);
INSERT INTO material VALUES(121,'244aad01-c180-5d84-86e1-820116b455eb','2026-11-02','soot','soot and dust','soot and dust',46,NULL);
INSERT INTO material VALUES(122,'15f5cb4c-24b4-5bff-9598-903526e76f6e','2026-11-02','brown-patina','brown patina, chemical','brown patina, chemical',47,NULL);
INSERT INTO material VALUES(123,'aaf31715-e62f-5ef5-969f-5c557ef0ad78','2026-11-02','bronze-patina','natural patina on bronze','natural patina on bronze',47,NULL);
INSERT INTO material VALUES(124,'e95b3f21-e7df-59c4-ba86-1b6168e918e5','2026-11-02','water','water','water',53,NULL);
INSERT INTO material VALUES(125,'9cb5e1cc-5888-5cda-9356-5e386c092e5d','2026-11-02','deionised-water','deionised water','deionised water',53,NULL);
INSERT INTO material VALUES(126,'3ea56f22-ecd1-5c79-85ba-075a80ac96da','2026-11-02','detergent','non-ionic detergent in water','non-ionic detergent in water',53,NULL);
INSERT INTO material VALUES(127,'dba04fec-20df-59af-86b1-44e5bcb13c42','2026-11-02','steam','steam','steam',55,NULL);
INSERT INTO material VALUES(128,'2cb9ca6a-80f8-5ec5-b85b-c79a10eea545','2026-11-02','hot-air','hot air','hot air',55,NULL);
INSERT INTO material VALUES(129,'282cc4e3-ce48-5c90-a00f-97452914bf47','2026-11-02','caustic-soda','caustic soda','caustic soda',51,NULL);
INSERT INTO material VALUES(130,'904aebd9-3318-5874-86d5-9813d380be03','2026-11-02','ammonia','ammonia solution','ammonia solution',51,NULL);
INSERT INTO material VALUES(131,'81b4854d-57db-5c4b-9438-0c968ff0db0c','2026-11-02','muriatic-acid','hydrochloric acid','hydrochloric acid',50,NULL);
INSERT INTO material VALUES(132,'95712723-9ac9-5ede-a59b-373c39305b57','2026-11-02','oxalic-acid','oxalic acid','oxalic acid',50,NULL);
INSERT INTO material VALUES(133,'a1059575-6021-5424-b82a-ec1e4a4d4324','2026-11-02','formic-acid','formic acid','formic acid',50,NULL);
INSERT INTO material VALUES(134,'b998da97-b8d8-59f2-9525-234433df43ab','2026-11-02','nitric-acid','nitric acid','nitric acid',50,NULL);
INSERT INTO material VALUES(135,'60bcc928-3071-5722-ba9b-5338b9090e08','2026-11-02','edta','EDTA disodium salt','edta disodium salt',52,NULL);
INSERT INTO material VALUES(136,'d421d905-4465-5308-8103-9cee33513dc3','2026-11-02','ammonium-citrate','triammonium citrate','triammonium citrate',52,NULL);
INSERT INTO material VALUES(137,'f981366e-5ae9-51d7-9204-c912a2b5bd4e','2026-11-02','acetone','acetone','acetone',49,NULL);
INSERT INTO material VALUES(138,'ee41391b-8638-5972-8d43-f0e6d830252f','2026-11-02','ethanol','ethanol','ethanol',49,NULL);
INSERT INTO material VALUES(139,'dacede58-6ab2-56e8-a343-1f3441092c83','2026-11-02','methanol','methanol','methanol',49,NULL);
INSERT INTO material VALUES(140,'a306bf55-2eb4-56af-845e-d75f3d408f15','2026-11-02','toluene','toluene','toluene',49,NULL);
INSERT INTO material VALUES(141,'378e5e93-b0f6-58af-84fa-d1006ccafcdd','2026-11-02','white-spirit','white spirit','white spirit',49,NULL);
INSERT INTO material VALUES(142,'63d74c4c-963d-5a02-a036-5bc984551baa','2026-11-02','dichloromethane','dichloromethane','dichloromethane',49,NULL);
INSERT INTO material VALUES(143,'b34b8105-b9de-51ba-8162-49d905a6aadd','2026-11-02','butanone','butanone','butanone',49,NULL);
INSERT INTO material VALUES(144,'848c503f-8662-5e3d-946f-ad4db809f807','2026-11-02','dmf','dimethylformamide','dimethylformamide',49,NULL);
INSERT INTO material VALUES(145,'22364e89-45fc-5120-ad13-975a9155ae83','2026-11-02','turpentine','turpentine','turpentine',49,NULL);
INSERT INTO material VALUES(146,'1a15caf8-3868-5d98-84bb-4ce3ecda086a','2026-11-02','amyl-acetate','amyl acetate','amyl acetate',49,NULL);
INSERT INTO material VALUES(147,'cdea2d3a-1ebe-53cd-a339-6ca985c6a668','2026-11-02','glass-bead','glass bead, blasted','glass bead, blasted',54,NULL);
INSERT INTO material VALUES(148,'e59f0b88-07c6-5f9a-9863-cd77227cbc42','2026-11-02','pumice','pumice powder','pumice powder',54,NULL);
INSERT INTO material VALUES(149,'e77b17b9-056e-564d-beb2-e612076d6eac','2026-11-02','mercuric-chloride','mercuric chloride','mercuric chloride',56,'Poison; does not leave by itself.');
INSERT INTO material VALUES(150,'47e35684-e499-596f-b3c7-8ef4468c92bd','2026-11-02','paraffin-oil','lamp oil','lamp oil',56,NULL);
INSERT INTO material VALUES(151,'f0e36712-58cd-5290-9813-4a2b9aa26125','2026-11-02','methyl-bromide','methyl bromide','methyl bromide',56,'Gas.');
INSERT INTO material VALUES(152,'f8d79036-5df5-59d1-b458-5b37569c1c88','2026-11-02','slate','slate','slate',2,NULL);
INSERT INTO material VALUES(153,'b38954ad-7256-5a88-9bb0-563021528a49','2026-11-02','silver-solder','silver solder (hard)','silver solder (hard)',16,NULL);
INSERT INTO material VALUES(154,'2397b2a8-0763-5ad2-9689-53dc00448dbf','2026-11-02','glass-paint','fired glass paint','fired glass paint',37,NULL);
INSERT INTO material VALUES(155,'2acd9493-5e69-5353-940c-d857db43240c','2026-11-02','light-putty','leaded light putty (oil, chalk, lamp black)','leaded light putty (oil, chalk, lamp black)',35,NULL);
INSERT INTO material VALUES(156,'3cf706a0-4004-501d-a826-1458d5450f53','2026-11-02','polishing-chalk','precipitated chalk in water','precipitated chalk in water',54,NULL);
INSERT INTO material VALUES(157,'0e2627bf-325d-577c-acb6-fef743f2d8f6','2026-11-02','silver-dip','acid thiourea dip','acid thiourea dip',50,NULL);
INSERT INTO material VALUES(158,'59f6f443-029b-5423-b4e0-b56f2b2980fb','2026-11-02','white-lead-paint','lead white oil paint','lead white oil paint',35,NULL);
INSERT INTO material VALUES(159,'6707fdab-b5e6-5c69-b0e9-044ed8f6a03e','2026-11-02','hemp','hemp rope','hemp rope',11,NULL);
INSERT INTO material VALUES(160,'408dba33-be55-50a9-93a7-853447fb04ef','2026-11-02','creosote','creosote','creosote',36,NULL);
CREATE TABLE person_alias (
	person_id INTEGER NOT NULL, 
	alias TEXT NOT NULL, 
	alias_folded TEXT NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_person_alias PRIMARY KEY (person_id, alias), 
	CONSTRAINT fk_person_alias_person_id FOREIGN KEY(person_id) REFERENCES person (id)
)
 STRICT

;
INSERT INTO person_alias VALUES(1,'J. Haske','j. haske',0);
INSERT INTO person_alias VALUES(1,'Haske of the Stonewharf','haske of the stonewharf',1);
INSERT INTO person_alias VALUES(2,'T. Wend','t. wend',0);
INSERT INTO person_alias VALUES(3,'A. Crane','a. crane',0);
INSERT INTO person_alias VALUES(3,'Crane & Son','crane & son',1);
INSERT INTO person_alias VALUES(4,'J. Thurlby','j. thurlby',0);
INSERT INTO person_alias VALUES(4,'the steward','the steward',1);
INSERT INTO person_alias VALUES(5,'E. Marrable','e. marrable',0);
INSERT INTO person_alias VALUES(5,'E.M.','e.m.',1);
INSERT INTO person_alias VALUES(6,'Miss Lisle','miss lisle',0);
INSERT INTO person_alias VALUES(6,'H. Lisle','h. lisle',1);
INSERT INTO person_alias VALUES(7,'W. Orde','w. orde',0);
INSERT INTO person_alias VALUES(7,'W.O.','w.o.',1);
INSERT INTO person_alias VALUES(7,'Ord','ord',2);
INSERT INTO person_alias VALUES(8,'C. Yarrow','c. yarrow',0);
INSERT INTO person_alias VALUES(8,'C.Y.','c.y.',1);
INSERT INTO person_alias VALUES(9,'Miss Finch','miss finch',0);
INSERT INTO person_alias VALUES(9,'D. Finch','d. finch',1);
INSERT INTO person_alias VALUES(9,'D.F.','d.f.',2);
INSERT INTO person_alias VALUES(10,'R. Tasker','r. tasker',0);
INSERT INTO person_alias VALUES(10,'Ron T.','ron t.',1);
INSERT INTO person_alias VALUES(11,'M. Hollander','m. hollander',0);
INSERT INTO person_alias VALUES(11,'M.H.','m.h.',1);
INSERT INTO person_alias VALUES(12,'P. Garrod','p. garrod',0);
INSERT INTO person_alias VALUES(12,'P.G.','p.g.',1);
INSERT INTO person_alias VALUES(13,'S. Dale','s. dale',0);
INSERT INTO person_alias VALUES(13,'S.D.','s.d.',1);
INSERT INTO person_alias VALUES(14,'I. Calder','i. calder',0);
INSERT INTO person_alias VALUES(14,'I.C.','i.c.',1);
INSERT INTO person_alias VALUES(15,'J. Pendry','j. pendry',0);
INSERT INTO person_alias VALUES(15,'J.P.','j.p.',1);
INSERT INTO person_alias VALUES(16,'T. Aldous','t. aldous',0);
INSERT INTO person_alias VALUES(16,'T.A.','t.a.',1);
INSERT INTO person_alias VALUES(17,'A. Whitlock','a. whitlock',0);
INSERT INTO person_alias VALUES(17,'A.W.','a.w.',1);
INSERT INTO person_alias VALUES(18,'L. Strand','l. strand',0);
INSERT INTO person_alias VALUES(18,'L.S.','l.s.',1);
INSERT INTO person_alias VALUES(19,'B. Castell','b. castell',0);
CREATE TABLE treatment (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	title TEXT, 
	purpose TEXT, 
	status TEXT, 
	begun_words TEXT, 
	begun_edtf TEXT, 
	begun_earliest INTEGER NOT NULL, 
	begun_latest INTEGER NOT NULL, 
	begun_flags INTEGER NOT NULL, 
	begun_derived TEXT NOT NULL, 
	ended_words TEXT, 
	ended_edtf TEXT, 
	ended_earliest INTEGER NOT NULL, 
	ended_latest INTEGER NOT NULL, 
	ended_flags INTEGER NOT NULL, 
	ended_derived TEXT NOT NULL, 
	lead_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_treatment_begun_in_order CHECK (begun_earliest <= begun_latest), 
	CONSTRAINT ck_treatment_ended_in_order CHECK (ended_earliest <= ended_latest), 
	CONSTRAINT fk_treatment_lead_id FOREIGN KEY(lead_id) REFERENCES person (id), 
	CONSTRAINT fk_treatment_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT uq_treatment_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_treatment_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_treatment_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO treatment VALUES(1,'34b01bbe-bd7f-578a-b86e-1965d9d04d8b','2026-11-02',1,'T1741','Making and first setting','Set up in the garden of Ebbstone House','closed','1741','1741',635523,635887,0,'edtf','1741','1741',635523,635887,0,'edtf',1,NULL);
INSERT INTO treatment VALUES(2,'72cb6a7d-452a-50b8-92cf-059076e00c6a','2026-11-02',1,'T1868','Taking down, carrying and setting','Moved to the Custom House terrace','closed','1868','1868',681908,682273,0,'edtf','before 1872','../1871',-9000000,683368,0,'words',NULL,'Bill and letter disagree on who took it down and what held the dolphins.');
INSERT INTO treatment VALUES(3,'813bd219-7d36-5f8e-979b-4d4b975d4c07','2026-11-02',1,'T1934','Washing, pointing and stopping','Smarten for a visit; stop the leaks','closed','1934-04','1934-04',706104,706133,0,'edtf','1934-09','1934-09',706257,706286,0,'edtf',7,NULL);
INSERT INTO treatment VALUES(4,'b31f6428-f20e-5ef5-a786-401c325b3931','2026-11-02',1,'T1958','Water off, moved indoors','Frost damage','closed','1958-04','1958-04',714870,714899,0,'edtf','1958-05','1958-05',714900,714930,0,'edtf',9,NULL);
INSERT INTO treatment VALUES(5,'0c62839f-7ee6-5736-8ddf-f932512e3b7c','2026-11-02',1,'T1967','Lip mended','The rusted cramp had split the lip','closed','1967-03','1967-03',718126,718156,0,'edtf','1967-03','1967-03',718126,718156,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(6,'1b7772f2-96a9-55ba-9ba4-9d3146cdbf9e','2026-11-02',1,'T1976','Lip consolidated','Sugaring of the front edge','closed','1976-08','1976-08',721567,721597,0,'edtf','1976-10','1976-10',721628,721658,0,'edtf',11,'The consolidant is not established.');
INSERT INTO treatment VALUES(7,'d6babec6-a80e-557b-a6c2-ab3e9590228f','2026-11-02',1,'T1989','Structural treatment','Loose shell, loose left dolphin','closed','1989-03','1989-03',726162,726192,0,'edtf','1989-07','1989-07',726284,726314,0,'edtf',12,'Contract; the works had to end before an opening.');
INSERT INTO treatment VALUES(8,'0e3e05a5-d454-5c3a-9f5b-82594084d01c','2026-11-02',1,'T2012','Examination and partial undoing','Radiography; open two suspect joints; masks','closed','2011-09','2011-09',734381,734410,0,'edtf','2012-11','2012-11',734808,734837,0,'edtf',14,NULL);
INSERT INTO treatment VALUES(9,'3f20ea31-9bf4-5133-be4a-0e73ca2e6761','2026-11-02',1,'T2026','Move to the new gallery','Make fit to be taken down, carried and set up','open','2026-09','2026-09',739860,739889,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',17,'No joint is opened before J14 is understood.');
INSERT INTO treatment VALUES(10,'0937d0e4-6d39-50c1-8c4f-a9f0406a4913','2026-11-02',3,'T1894','Dish put together','Broken in the van','closed','1894','1894',691405,691769,0,'edtf','1894','1894',691405,691769,0,'edtf',5,NULL);
INSERT INTO treatment VALUES(11,'15316ff3-75d8-5597-aa79-ebce6c5fc047','2026-11-02',3,'T1959','Rim sherd stuck again',NULL,'closed','1959','1959',715145,715509,0,'edtf','1959','1959',715145,715509,0,'edtf',8,NULL);
INSERT INTO treatment VALUES(12,'a2b6660a-2563-5cb9-a724-8282d4d1b65b','2026-11-02',3,'T1992','Overpaint off, new fill','Display','closed','1992-02','1992-02',727229,727257,0,'edtf','1992-05','1992-05',727319,727349,0,'edtf',13,NULL);
INSERT INTO treatment VALUES(13,'be7defb0-a328-5f86-95a1-b6b55c85f38b','2026-11-02',4,'T1972','Figure stuck','Fell in a packing case','closed','1972-11','1972-11',720198,720227,0,'edtf','1972-11','1972-11',720198,720227,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(14,'ba507410-0447-5b6e-8b82-c5cc1b26c186','2026-11-02',4,'T2003','Hand and base','Loan','closed','2003-06','2003-06',731367,731396,0,'edtf','2003-09','2003-09',731459,731488,0,'edtf',13,NULL);
INSERT INTO treatment VALUES(15,'6e0a5de2-7654-5533-8b16-190157e94585','2026-11-02',5,'T1904','Chest put in order',NULL,'closed','1904','1904',695056,695421,0,'edtf','1904','1904',695056,695421,0,'edtf',5,NULL);
INSERT INTO treatment VALUES(16,'4fa1d35b-b047-576a-a3a8-4a9f4187d39c','2026-11-02',5,'T1921','Worm',NULL,'closed','1921-06','1921-06',701417,701446,0,'edtf','1921-06','1921-06',701417,701446,0,'edtf',NULL,'Named in a typed list, without a hand.');
INSERT INTO treatment VALUES(17,'04cdb7e5-e0f4-5a4d-8d01-5ad0665b1573','2026-11-02',5,'T1962','Front hardened',NULL,'closed','1962','1962',716241,716605,0,'edtf','1962','1962',716241,716605,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(18,'493857ef-b020-5638-a4c5-e329697e76b2','2026-11-02',5,'T2015','Mercury survey and cleaning','Safe handling','closed','2015-02','2015-02',735630,735657,0,'edtf','2015-03','2015-03',735658,735688,0,'edtf',15,NULL);
INSERT INTO treatment VALUES(19,'7ffd17dc-8322-555e-94d7-b6aabd853f97','2026-11-02',6,'T1926','Made fit for the stair hall',NULL,'closed','1926','1926',703092,703456,0,'edtf','1926','1926',703092,703456,0,'edtf',7,NULL);
INSERT INTO treatment VALUES(20,'ed49678c-b085-57f8-8a65-5f689263f9e4','2026-11-02',6,'T1968','Rot stopped',NULL,'closed','1968','1968',718432,718797,0,'edtf','1968','1968',718432,718797,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(21,'5afcaaee-f843-57df-acce-225db6c50d83','2026-11-02',6,'T1977','Face','Flaking paint','closed','1977','1977',721720,722084,0,'edtf','1978','1978',722085,722449,0,'edtf',11,NULL);
INSERT INTO treatment VALUES(22,'c32599f1-796a-5aba-9dbd-e8881c3d0a24','2026-11-02',6,'T2014','New cradle, uncovering tests','Leaning forward 4 degrees','closed','2014-03','2014-03',735293,735323,0,'edtf','2014-10','2014-10',735507,735537,0,'edtf',16,NULL);
INSERT INTO treatment VALUES(23,'b3cae8eb-c34e-5c3d-9189-e638e7a7b6dd','2026-11-02',7,'T1955','Lacquered',NULL,'closed','1955','1955',713684,714048,0,'edtf','1955','1955',713684,714048,0,'edtf',8,NULL);
INSERT INTO treatment VALUES(24,'1e268c88-9f74-5b5a-8513-44735310d5de','2026-11-02',7,'T1994','Lacquer off','Tarnish through the lacquer','closed','1994-01','1994-01',727929,727959,0,'edtf','1994-03','1994-03',727988,728018,0,'edtf',NULL,'Hand signs only as "the placement student".');
INSERT INTO treatment VALUES(25,'e79127d3-8fc0-5a3c-831d-b97a9ea0db45','2026-11-02',7,'T2008','Cleaned and lacquered','Display','closed','2008-10','2008-10',733316,733346,0,'edtf','2008-11','2008-11',733347,733376,0,'edtf',14,NULL);
INSERT INTO treatment VALUES(26,'2a5f84da-c337-50e9-b69d-087a5813be3c','2026-11-02',8,'T1949','Pane and paint','Gift, as found on the quay','closed','1949','1949',711493,711857,0,'edtf','1949','1949',711493,711857,0,'edtf',8,NULL);
INSERT INTO treatment VALUES(27,'fe3e335d-4ebf-51d0-bce6-e540fc11896d','2026-11-02',8,'T1991','Panes secured',NULL,'closed','1991','1991',726833,727197,0,'edtf','1991','1991',726833,727197,0,'edtf',NULL,NULL);
INSERT INTO treatment VALUES(28,'59653f2b-8185-57be-96bd-b1e103aa9b4b','2026-11-02',8,'T2021','Lamp oil, loose panes','Gallery 1','closed','2021-05','2021-05',737911,737941,0,'edtf','2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO treatment VALUES(29,'fece10c7-26bf-5b18-aff8-a28b57a34ccf','2026-11-02',9,'T1899','New nose, bronzed',NULL,'closed','1899','1899',693231,693595,0,'edtf','1899','1899',693231,693595,0,'edtf',5,NULL);
INSERT INTO treatment VALUES(30,'e4d37384-7a3b-5509-8080-0bdd14ac2667','2026-11-02',9,'T1976','Washed white',NULL,'closed','1976','1976',721354,721719,0,'edtf','1976','1976',721354,721719,0,'edtf',11,NULL);
INSERT INTO treatment VALUES(31,'f96baed3-e9c7-55d2-a06a-8d6dff5ca909','2026-11-02',9,'T2018','Split chest','Fall of 2017','closed','2017-11','2017-11',736634,736663,0,'edtf','2018-07','2018-07',736876,736906,0,'edtf',17,NULL);
INSERT INTO treatment VALUES(32,'c52e43be-5d68-5994-a244-8ae90a0894bb','2026-11-02',10,'T1969','Bowl stuck',NULL,'closed','1969','1969',718798,719162,0,'edtf','1969','1969',718798,719162,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(33,'4629999e-df73-53d3-affa-3299f895391f','2026-11-02',10,'T1998','Undone and stuck again','Yellow joins','closed','1998-02','1998-02',729421,729448,0,'edtf','1998-05','1998-05',729510,729540,0,'edtf',13,NULL);
INSERT INTO treatment VALUES(34,'6db5180a-0b9a-5234-9e8b-7e2bafcf80e9','2026-11-02',10,'T2026','Joins checked','Haze along the old joins','open','2026-05','2026-05',739737,739767,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',17,NULL);
INSERT INTO treatment VALUES(35,'944781c1-466b-56df-8802-2a7652017abd','2026-11-02',11,'T1893','Releaded in part',NULL,'closed','1893','1893',691040,691404,0,'edtf','1893','1893',691040,691404,0,'edtf',5,'Before it came to the museum: Marrable did it as a private job.');
INSERT INTO treatment VALUES(36,'048c9ca4-0bc0-5b5f-8791-7d1f4e58e6e7','2026-11-02',11,'T1988','Crack and paint',NULL,'closed','1988','1988',725737,726102,0,'edtf','1988','1988',725737,726102,0,'edtf',12,NULL);
INSERT INTO treatment VALUES(37,'0a2c2f9c-a34a-52c2-b35d-5ca0c8ecc5e7','2026-11-02',12,'T1906','Set on slate',NULL,'closed','1906','1906',695787,696151,0,'edtf','1906','1906',695787,696151,0,'edtf',5,NULL);
INSERT INTO treatment VALUES(38,'f44f3eb5-9200-52db-8f61-956c97346b24','2026-11-02',12,'T1973','Break stuck',NULL,'closed','1973','1973',720259,720623,0,'edtf','1973','1973',720259,720623,0,'edtf',10,NULL);
INSERT INTO treatment VALUES(39,'dc5664cf-abaa-50bf-b3af-d4326e04d4dd','2026-11-02',12,'T1985','Stain and salts',NULL,'closed','1985-04','1985-04',724732,724761,0,'edtf','1985-06','1985-06',724793,724822,0,'edtf',12,NULL);
INSERT INTO treatment VALUES(40,'9b59ea1e-8d48-55f5-8375-df26d6191ac1','2026-11-02',13,'T1938','Hung',NULL,'closed','1938','1938',707475,707839,0,'edtf','1938','1938',707475,707839,0,'edtf',7,NULL);
INSERT INTO treatment VALUES(41,'cff0a88d-9087-53fd-9691-1408aa13c4fa','2026-11-02',13,'T1961','Polished',NULL,'closed','1961','1961',715876,716240,0,'edtf','1961','1961',715876,716240,0,'edtf',8,NULL);
INSERT INTO treatment VALUES(42,'fd5d85eb-f4aa-52a0-8295-5932357b4f7a','2026-11-02',13,'T2021','Pale green spots','Active corrosion','closed','2021-02','2021-02',737822,737849,0,'edtf','2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO treatment VALUES(43,'6b09847f-ec36-5ad8-ba69-d5878099be61','2026-11-02',13,'T2026','Yearly check','Watch for chlorides','open','2026-06','2026-06',739768,739797,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',16,NULL);
INSERT INTO treatment VALUES(44,'3277dc9d-ebc5-545d-ab15-acbc9809d35f','2026-11-02',2,'T1891','Mended','Broken from its stand in 1889','closed','1890','1890',689944,690308,0,'edtf','1891-10','1891-10',690582,690612,0,'edtf',6,'Sherds numbered in Indian ink, 1 to 20.');
INSERT INTO treatment VALUES(45,'a3c37cd1-5867-5338-8091-0bc396627d3f','2026-11-02',2,'T1936','Handle and rim made good',NULL,'closed','1936','1936',706744,707109,0,'edtf','1936','1936',706744,707109,0,'edtf',7,NULL);
INSERT INTO treatment VALUES(46,'9e58d563-805c-5e77-ba49-5fc484a311f2','2026-11-02',2,'T1952','Belly taken down and stuck','Joins gave in a warm summer','closed','1952-09','1952-09',712832,712861,0,'edtf','1952-11','1952-11',712893,712922,0,'edtf',8,NULL);
INSERT INTO treatment VALUES(47,'56035625-f3a3-52cd-a455-6e0da9336ab2','2026-11-02',2,'T1978','Shoulder stuck','Fell in at the shoulder','closed','1978-02','1978-02',722116,722143,0,'edtf','1978-04','1978-04',722175,722204,0,'edtf',11,NULL);
INSERT INTO treatment VALUES(48,'f15e09a3-ec5e-5022-8c5f-075add35d916','2026-11-02',2,'T1996','Part taken down, overpaint off','Yellow joins, creep','closed','1996-05','1996-05',728780,728810,0,'edtf','1996-12','1996-12',728994,729024,0,'edtf',13,'The money ran out at join 10.');
INSERT INTO treatment VALUES(49,'5349a772-2828-569d-a358-55764888306f','2026-11-02',2,'T2025','Survey and plan','Join 14 moves','open','2025-03','2025-03',739311,739341,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',17,NULL);
CREATE TABLE component (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	mark TEXT NOT NULL, 
	mark_folded TEXT NOT NULL, 
	parent_id INTEGER, 
	name TEXT, 
	name_folded TEXT, 
	kind TEXT, 
	origin TEXT, 
	material_id INTEGER, 
	material_words TEXT, 
	width_mm REAL, 
	height_mm REAL, 
	depth_mm REAL, 
	mass_kg REAL, 
	mass_basis TEXT, 
	made_words TEXT, 
	made_edtf TEXT, 
	made_earliest INTEGER NOT NULL, 
	made_latest INTEGER NOT NULL, 
	made_flags INTEGER NOT NULL, 
	made_derived TEXT NOT NULL, 
	lost_words TEXT, 
	lost_edtf TEXT, 
	lost_earliest INTEGER NOT NULL, 
	lost_latest INTEGER NOT NULL, 
	lost_flags INTEGER NOT NULL, 
	lost_derived TEXT NOT NULL, 
	kept_at TEXT, 
	known_from TEXT, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_component_known_from_known CHECK (known_from IN ('seen', 'documented', 'picture only', 'suspected')), 
	CONSTRAINT ck_component_origin_known CHECK (origin IN ('original', 'later', 'restoration', 'replacement', 'fixing', 'mount', 'uncertain')), 
	CONSTRAINT ck_component_lost_in_order CHECK (lost_earliest <= lost_latest), 
	CONSTRAINT ck_component_made_in_order CHECK (made_earliest <= made_latest), 
	CONSTRAINT ck_component_mass_positive CHECK (mass_kg >= 0), 
	CONSTRAINT ck_component_not_its_own_parent CHECK (parent_id <> id), 
	CONSTRAINT ck_component_size_positive CHECK (width_mm >= 0 AND height_mm >= 0 AND depth_mm >= 0), 
	CONSTRAINT fk_component_material_id FOREIGN KEY(material_id) REFERENCES material (id), 
	CONSTRAINT fk_component_object_id_parent_id FOREIGN KEY(object_id, parent_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_component_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_component_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_component_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_component_object_id_mark_folded UNIQUE (object_id, mark_folded), 
	CONSTRAINT uq_component_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO component VALUES(1,'1f0a107b-de28-50ae-a74e-bbe81d8247cf','2026-11-02',1,'B01','b01',NULL,'plinth course','plinth course','block','original',1,NULL,2100.0,240.0,620.0,640.0,'estimate: volume less cuttings x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Moved in 2011 with the pedestal and basin standing on it. Quarry face left rough at the back.');
INSERT INTO component VALUES(2,'8215d3f9-0003-5394-b32d-4c3bda3135cc','2026-11-02',1,'B02','b02',NULL,'pedestal of the basin','pedestal of the basin','block','original',1,NULL,640.0,520.0,560.0,330.0,'estimate: volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Channel for the lead pipe cut through the core.');
INSERT INTO component VALUES(3,'3c63e6d2-8ace-5a23-8485-2fb61a46eeea','2026-11-02',1,'B03','b03',NULL,'basin, left half','basin, left half','block','original',1,NULL,1050.0,380.0,760.0,395.0,'load cells 2011, shared out by volume',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Mason''s mark on the joint face: a fish hook.');
INSERT INTO component VALUES(4,'9d82fa3e-c0b6-55ed-acc4-aa900ee603ce','2026-11-02',1,'B04','b04',NULL,'basin, right half','basin, right half','block','original',1,NULL,1050.0,380.0,760.0,402.0,'load cells 2011, shared out by volume',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Old frost crack from the outlet, stable since 1958.');
INSERT INTO component VALUES(5,'fca04a68-d4a8-50ea-a659-2d8a3f4ae6e6','2026-11-02',1,'B05','b05',NULL,'back slab, lower','back slab, lower','block','original',1,NULL,1480.0,700.0,210.0,465.0,'estimate: volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'The salts bloom here first, at a line 300 mm above the bed.');
INSERT INTO component VALUES(6,'2ce60b19-4eff-529e-8cc6-538725c99607','2026-11-02',1,'B06','b06',NULL,'basin lip, left','basin lip, left','block','original',1,NULL,720.0,180.0,420.0,118.0,'survey 2012, volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Step of 2 mm to B07 since 1967.');
INSERT INTO component VALUES(7,'5968b25f-9439-53c0-ae57-cce58e7a1521','2026-11-02',1,'B07','b07',NULL,'basin lip, centre','basin lip, centre','block','original',1,NULL,900.0,180.0,420.0,141.0,'survey 2012, volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Carries the right dolphin. Front edge sugaring over about 300 mm.');
INSERT INTO component VALUES(8,'68356ed2-0491-52d6-a492-b7f5911b4920','2026-11-02',1,'B08','b08',NULL,'basin lip, right','basin lip, right','block','original',1,NULL,710.0,180.0,420.0,115.0,'estimate: volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(9,'8eb55afd-44ea-5ed4-8700-4c3091417afd','2026-11-02',1,'B09','b09',NULL,'back slab, upper left','back slab, upper left','block','original',1,NULL,740.0,980.0,230.0,352.0,'weighed 1989',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Recesses for the North and East masks.');
INSERT INTO component VALUES(10,'42ff0aa0-81c2-5366-890d-e7ebacb046d6','2026-11-02',1,'B10','b10',NULL,'back slab, upper right','back slab, upper right','block','original',1,NULL,745.0,980.0,230.0,358.0,'weighed 1989',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Recesses for the South and West masks.');
INSERT INTO component VALUES(11,'e06ac346-bd97-5f9b-b592-d0843eb9d562','2026-11-02',1,'B11','b11',NULL,'dolphin, left','dolphin, left','block','original',1,NULL,410.0,600.0,300.0,82.0,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(12,'0341df6c-7a70-5a2b-98b4-db6a55014a83','2026-11-02',1,'B12','b12',NULL,'dolphin, right','dolphin, right','block','original',1,NULL,420.0,610.0,300.0,85.0,'survey 2012, volume x 2.4 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Tail fin broken in 1868 and three times mended; stands without it today.');
INSERT INTO component VALUES(13,'0cde1d32-72bb-5d62-bb03-6d56d0d49c41','2026-11-02',1,'B12a','b12a',12,'tail fin of the right dolphin','tail fin of the right dolphin','fragment','original',1,NULL,130.0,160.0,60.0,1.9,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 3, drawer 14, box 2','seen',18,'Break face brown to purple under the newer skins.');
INSERT INTO component VALUES(14,'b9e79b18-3339-55d2-80f6-2df0d60e94cb','2026-11-02',1,'B12b','b12b',12,'scale of the right dolphin','scale of the right dolphin','fragment','original',1,NULL,70.0,55.0,25.0,0.15,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 3, drawer 14, box 2','seen',18,'Found loose in the outlet in 1958. Fits, but rests on old resin: not joined.');
INSERT INTO component VALUES(15,'e8db1fe2-d5d8-5de3-92bf-879e0049258a','2026-11-02',1,'B13','b13',NULL,'shell canopy','shell canopy','block','original',1,NULL,1180.0,420.0,510.0,190.0,'weighed 1989',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Leaf gilding remains in six flutes.');
INSERT INTO component VALUES(16,'dd925854-dec1-5ad9-bc06-4a135d3eefe5','2026-11-02',1,'B13a','b13a',15,'left scroll of the shell','left scroll of the shell','fragment','original',1,NULL,210.0,190.0,150.0,9.5,'estimate: volume x 2.3 t/m3',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Broken off in the carrying of 1868.');
INSERT INTO component VALUES(17,'24d2dae0-d0ac-55f2-b371-56cd211bd3e4','2026-11-02',1,'B14','b14',NULL,'urn, left','urn, left','block','original',1,NULL,240.0,430.0,240.0,31.0,'estimate: as B15','1741','1741',635523,635887,0,'edtf','[1941..1944]','[1941..1944]',708571,710031,0,'edtf',NULL,'documented',9,'Gone from the photograph of 1947. Taken for safety in the war years, or fallen: nobody wrote it down.');
INSERT INTO component VALUES(18,'e780bf5a-a144-5a51-ab27-33d454469ea6','2026-11-02',1,'B15','b15',NULL,'urn, right','urn, right','block','replacement',34,NULL,240.0,430.0,240.0,33.0,'weighed 1989','1868','1868',681908,682273,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',3,'"One Urn run in cement to match, 18s." The stone urn it replaced is not heard of again.');
INSERT INTO component VALUES(19,'88879745-73de-5c13-a5f2-0bb5ba07e952','2026-11-02',1,'W1','w1',NULL,'North mask','north mask','casting','original',4,NULL,310.0,340.0,130.0,14.2,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Puffed cheeks, icicles in the beard.');
INSERT INTO component VALUES(20,'61e9119e-c62e-5676-a0ea-6add1e411399','2026-11-02',1,'W2','w2',NULL,'East mask','east mask','casting','original',4,NULL,300.0,335.0,125.0,13.6,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(21,'c32e2cd2-a2e0-5537-819f-590d8943198e','2026-11-02',1,'W3','w3',NULL,'South mask','south mask','casting','replacement',4,NULL,305.0,335.0,120.0,15.9,'weighed 2012','1868?','1868?',681908,682273,1,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',18,'Alloy with 9 % zinc, walls twice as thick: not from the founder of the other three. The letter of 1871 says that four came whole.');
INSERT INTO component VALUES(22,'8f14d304-b2c9-50ee-ab69-8f7125b770a8','2026-11-02',1,'W4','w4',NULL,'West mask','west mask','casting','original',4,NULL,300.0,345.0,130.0,13.9,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Studio 2, shelf B','seen',18,'Off the wall since 2012; its armature was weeping rust.');
INSERT INTO component VALUES(23,'db0083f0-4add-5357-9ef0-9782b4f6f7b7','2026-11-02',1,'T1','t1',11,'spout of the left dolphin','spout of the left dolphin','casting','original',4,NULL,60.0,60.0,140.0,1.6,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Flattened on the underside by ice.');
INSERT INTO component VALUES(24,'9d61acd1-77f4-59ef-ba73-2bc0b11cc224','2026-11-02',1,'A1','a1',19,'armature of the North mask','armature of the north mask','armature','original',10,NULL,20.0,260.0,20.0,0.9,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'picture only',NULL,'Seen in the radiograph only as far as the ears.');
INSERT INTO component VALUES(25,'74d19378-359f-5dd8-91a5-bd6c291efffe','2026-11-02',1,'A2','a2',22,'armature of the West mask','armature of the west mask','armature','original',10,NULL,20.0,270.0,20.0,1.1,'weighed 2012',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 3, drawer 14, box 4','seen',18,'Drawn out in 2012 in two pieces, half the section rust.');
INSERT INTO component VALUES(26,'7f481974-0afe-5f88-87eb-36697508ed5e','2026-11-02',1,'K1','k1',NULL,'cramp across the basin halves','cramp across the basin halves','cramp','fixing',10,NULL,280.0,45.0,25.0,1.6,'estimate','1741','1741',635523,635887,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',2,'Reused in 1868: hammer marks and a second lead.');
INSERT INTO component VALUES(27,'cd9ef4e1-4b86-5272-9d76-7c94f99637ab','2026-11-02',1,'K2','k2',NULL,'cramp, lip left to lip centre','cramp, lip left to lip centre','cramp','fixing',10,NULL,250.0,45.0,25.0,1.4,'estimate','1741','1741',635523,635887,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank','Store 3, drawer 14, box 3','seen',12,'Sawn through in 1967. One leg is in the box, the other still sits in B07.');
INSERT INTO component VALUES(28,'87b77c43-af08-5d0e-af4b-fdc2ebc7314f','2026-11-02',1,'K3','k3',NULL,'cramp, lip to right dolphin','cramp, lip to right dolphin','cramp','fixing',10,NULL,190.0,40.0,22.0,1.0,'estimate','1741','1741',635523,635887,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',17,'Not visible. Plate 6: both legs in dense lead, a dark halo round the dolphin''s leg.');
INSERT INTO component VALUES(29,'3cabc3f6-3b9e-5d5c-a136-def070432e14','2026-11-02',1,'D1','d1',NULL,'dowel, lower to upper left slab','dowel, lower to upper left slab','dowel','fixing',10,NULL,30.0,160.0,30.0,1.1,'estimate','1868','1868',681908,682273,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',3,'Rust has lifted a scale of B09 the size of a hand.');
INSERT INTO component VALUES(30,'710ba56f-19b9-5c5e-a97f-9e466ed61e28','2026-11-02',1,'N1','n1',NULL,'brass pin, lip left to lip centre','brass pin, lip left to lip centre','pin','fixing',5,NULL,10.0,10.0,120.0,0.08,'estimate','1967','1967',718067,718431,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',12,NULL);
INSERT INTO component VALUES(31,'2aec5633-fbb9-5ea2-a3d3-c3cc51301865','2026-11-02',1,'N2','n2',NULL,'brass pin, lip centre to lip right','brass pin, lip centre to lip right','pin','fixing',5,NULL,10.0,10.0,120.0,0.08,'estimate','1967','1967',718067,718431,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',12,NULL);
INSERT INTO component VALUES(32,'fd300a18-1c26-5b62-b8b3-35283c0dd748','2026-11-02',1,'R1','r1',NULL,'threaded rod, left dolphin','threaded rod, left dolphin','threaded rod','fixing',13,NULL,12.0,180.0,12.0,0.16,'weighed 2012','1989','1989',726103,726467,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',15,'Came out whole in 2012 and went back in a sleeve.');
INSERT INTO component VALUES(33,'cb019614-ce73-536b-b095-159401785146','2026-11-02',1,'R2','r2',NULL,'threaded rod across the upper slabs','threaded rod across the upper slabs','threaded rod','fixing',13,NULL,12.0,12.0,260.0,0.23,'estimate','1989','1989',726103,726467,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',15,NULL);
INSERT INTO component VALUES(34,'a5dad0e3-7896-5150-b137-58a9eae47a6e','2026-11-02',1,'R3','r3',NULL,'threaded rod, shell to upper left slab','threaded rod, shell to upper left slab','threaded rod','fixing',13,NULL,12.0,200.0,12.0,0.18,'estimate','1989','1989',726103,726467,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',15,NULL);
INSERT INTO component VALUES(35,'acf0f0ac-1699-5d2a-ae1d-7f15a3d965f3','2026-11-02',1,'R4','r4',NULL,'threaded rod, shell to upper right slab','threaded rod, shell to upper right slab','threaded rod','fixing',13,NULL,12.0,200.0,12.0,0.18,'estimate','1989','1989',726103,726467,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'documented',15,NULL);
INSERT INTO component VALUES(36,'c5d69f1a-8873-5ad9-b023-5378c11a2e50','2026-11-02',1,'P1','p1',NULL,'pin seen at the right dolphin, front','pin seen at the right dolphin, front','pin','uncertain',NULL,NULL,NULL,NULL,95.0,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'picture only',17,'Known only from plate 6. Diameter about 8 mm, not iron by its edge; metal not established.');
INSERT INTO component VALUES(37,'8471ec55-1819-5b0b-a860-b1c39e649511','2026-11-02',1,'P2','p2',NULL,'pin seen at the right dolphin, back','pin seen at the right dolphin, back','pin','uncertain',NULL,NULL,NULL,NULL,90.0,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'picture only',17,'Known only from plates 6 and 7. Runs at a slant of 20 degrees: drilled from outside, after the dolphin stood.');
INSERT INTO component VALUES(38,'77c50026-1f03-53f4-8033-c963c110388f','2026-11-02',3,'D1','d1',NULL,'left half with the tail','left half with the tail','fragment','original',16,NULL,240.0,330.0,40.0,1.1,'weighed 1992',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(39,'92797e84-17af-5891-8741-298094b8a932','2026-11-02',3,'D2','d2',NULL,'right half with the face','right half with the face','fragment','original',16,NULL,190.0,300.0,40.0,0.9,'weighed 1992',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(40,'ca1e3062-a595-5f93-856d-c81b0e3c3a9a','2026-11-02',3,'D3','d3',NULL,'rim sherd, top','rim sherd, top','fragment','original',16,NULL,90.0,60.0,12.0,0.08,'weighed 1992',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(41,'255496af-50ce-5686-9f4f-eddefb6f05fe','2026-11-02',3,'D4','d4',NULL,'rim sherd, right','rim sherd, right','fragment','original',16,NULL,80.0,55.0,12.0,0.07,'weighed 1992',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(42,'2bf47cec-48b1-5917-8964-62ec2f1bb75b','2026-11-02',3,'D5','d5',NULL,'rim sherd, bottom','rim sherd, bottom','fragment','original',16,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','by 1913','../1913',-9000000,698708,0,'words',NULL,'documented',23,'Listed in 1894; "wanting" in the last volume of the daybook.');
INSERT INTO component VALUES(43,'936ae724-228d-5f7f-ada9-cf5f4502cf32','2026-11-02',4,'P1','p1',NULL,'rocky base','rocky base','fragment','original',18,NULL,130.0,60.0,110.0,0.42,'weighed 2003',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(44,'9d0b51f0-20d5-559e-bfb2-60892ae346f7','2026-11-02',4,'P2','p2',NULL,'seated woman without head','seated woman without head','fragment','original',18,NULL,100.0,140.0,80.0,0.38,'weighed 2003',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(45,'94ed6e15-1c5b-580b-8ea5-87a86809c910','2026-11-02',4,'P3','p3',44,'head with cap','head with cap','fragment','original',18,NULL,35.0,45.0,38.0,0.05,'weighed 2003',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(46,'8ed80521-3b80-5338-86d9-cd6b4d42600b','2026-11-02',4,'P4','p4',44,'left hand','left hand','fragment','original',18,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','[1941,1946]','[1941,1946]',708571,710761,0,'edtf',NULL,'picture only',28,'Not in the crate when it came back from the quarry.');
INSERT INTO component VALUES(47,'a364dbea-db21-521b-b472-0cea99bc9e18','2026-11-02',4,'P5','p5',43,'corner of the net','corner of the net','fragment','original',18,NULL,30.0,22.0,8.0,0.01,'weighed 2003',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(48,'a7292d00-8cc4-58bb-9cc9-449587c9ea45','2026-11-02',4,'P6','p6',NULL,'left hand, cast after a twin figure','left hand, cast after a twin figure','insert','restoration',76,NULL,14.0,22.0,12.0,0.004,'weighed 2003','2003','2003',731216,731580,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',35,'Coloured epoxy cast; slides out.');
INSERT INTO component VALUES(49,'02c6be85-01d2-5b32-8318-dc0c27963539','2026-11-02',4,'P7','p7',NULL,'flower, not placed','flower, not placed','fragment','uncertain',18,NULL,15.0,15.0,6.0,0.002,'weighed 2003',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 1, cabinet 6, box a','seen',NULL,'Same glaze, but no scar for it on base or dress.');
INSERT INTO component VALUES(50,'529c4a28-939c-5fea-8b5b-d38b8ed9dbf7','2026-11-02',4,'Q1','q1',NULL,'dowel in the neck','dowel in the neck','dowel','fixing',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'suspected',29,'A magnet does not answer; nobody has taken a plate.');
INSERT INTO component VALUES(51,'65851b88-a4b1-5410-b1b3-7a1c8238310d','2026-11-02',5,'K1','k1',NULL,'lid','lid','board','original',20,NULL,1180.0,30.0,520.0,14.0,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(52,'a101b9f3-f191-5b36-8bad-7a0eca41ecc7','2026-11-02',5,'K2','k2',NULL,'front','front','board','original',20,NULL,1120.0,480.0,28.0,10.0,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(53,'13127960-42bc-55ee-a7a6-5f1cb1afabbb','2026-11-02',5,'K3','k3',NULL,'left end','left end','board','original',20,NULL,480.0,480.0,28.0,4.5,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(54,'dab8ce99-0d53-5dbc-aa40-63555a4f60d2','2026-11-02',5,'K4','k4',NULL,'right end','right end','board','original',20,NULL,480.0,480.0,28.0,4.5,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(55,'884c501d-4832-5359-8384-d81caedd5c7a','2026-11-02',5,'K5','k5',NULL,'back and bottom','back and bottom','board','original',20,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(56,'726793c8-ca02-5d71-8e50-32120685de12','2026-11-02',5,'K6','k6',NULL,'till','till','box','original',20,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','before 1903','../1902',-9000000,694690,0,'words',NULL,'documented',23,'Only its slots are left.');
INSERT INTO component VALUES(57,'1daa35a6-d483-56e5-b3ae-fede45bd917e','2026-11-02',5,'K7','k7',NULL,'strap hinge, left','strap hinge, left','hinge','original',10,NULL,40.0,380.0,5.0,0.7,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(58,'1b525bb2-b417-5631-b241-12b744b6a219','2026-11-02',5,'K8','k8',NULL,'strap hinge, right','strap hinge, right','hinge','replacement',12,NULL,40.0,370.0,4.0,0.6,'estimate','1890s','189X',689944,693595,0,'words',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,'Smith''s work of the harbour yard; screws with slotted heads.');
INSERT INTO component VALUES(59,'b68353b3-90f0-57a7-9e44-6dbf83918536','2026-11-02',5,'K9','k9',NULL,'patch in the front','patch in the front','insert','restoration',20,NULL,160.0,90.0,12.0,NULL,NULL,'1904','1904',695056,695421,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,NULL);
INSERT INTO component VALUES(60,'75caefdb-b2f9-5d1b-8363-ac0f8787321a','2026-11-02',6,'W1','w1',NULL,'body to the knees','body to the knees','block','original',23,NULL,520.0,1350.0,480.0,96.0,'weighed 2014',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(61,'cf978039-e065-5d7e-8756-98a571f44cac','2026-11-02',6,'W2','w2',NULL,'head','head','block','original',23,NULL,240.0,330.0,270.0,9.0,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(62,'2d807644-207f-509a-a8a5-4096ca65266a','2026-11-02',6,'W3','w3',NULL,'left arm','left arm','limb','original',23,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','1907','1907',696152,696516,0,'edtf',NULL,'documented',23,'Carried away by a crane, says the daybook.');
INSERT INTO component VALUES(63,'0c5d3ba6-78ce-50c4-8fea-df543cd7182f','2026-11-02',6,'W4','w4',NULL,'right arm with a rose','right arm with a rose','limb','original',23,NULL,180.0,640.0,160.0,6.0,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(64,'30685eec-b5bc-51c6-8a75-a7323595c246','2026-11-02',6,'W5','w5',NULL,'scroll below','scroll below','block','original',20,NULL,460.0,380.0,300.0,22.0,'weighed 2014',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(65,'75a60796-6165-597c-a2be-8e2da40550c6','2026-11-02',6,'W6','w6',NULL,'splice in the shoulder','splice in the shoulder','insert','restoration',23,NULL,90.0,210.0,60.0,NULL,NULL,'1926','1926',703092,703456,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',26,NULL);
INSERT INTO component VALUES(66,'53c27eb5-c365-5af1-ae8b-b1fea4428e15','2026-11-02',6,'B1','b1',NULL,'bolt through the scroll','bolt through the scroll','bolt','fixing',10,NULL,22.0,22.0,410.0,1.2,'estimate','1838','1838',670951,671315,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(67,'9c56c045-32ab-5add-9ae2-9dbeb54cf3ff','2026-11-02',6,'B2','b2',NULL,'bolt in the neck','bolt in the neck','bolt','fixing',10,NULL,NULL,NULL,NULL,NULL,NULL,'1838','1838',670951,671315,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'suspected',38,'Magnet answers on both sides of the joint; not seen.');
INSERT INTO component VALUES(68,'1a147a94-8c88-5778-ae59-5e6056cf5a28','2026-11-02',6,'N1','n1',NULL,'steel cradle','steel cradle','mount','mount',13,NULL,600.0,900.0,420.0,38.0,'weighed 2014','2014','2014',735234,735598,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',38,'Carries the scroll, not the body.');
INSERT INTO component VALUES(69,'a2be7f5e-c200-5b0d-8a8a-d6c09e2d3539','2026-11-02',7,'T1','t1',NULL,'bowl','bowl','vessel','original',7,NULL,180.0,210.0,180.0,0.92,'weighed 1994',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(70,'f4f0d02e-78b5-5758-9b6e-75112847464a','2026-11-02',7,'T2','t2',NULL,'stem and foot','stem and foot','casting','original',7,NULL,130.0,160.0,130.0,0.61,'weighed 1994',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(71,'fdc57636-a0cb-5826-9b3f-38a35c6eb027','2026-11-02',7,'T3','t3',NULL,'cover','cover','casting','original',7,NULL,170.0,90.0,170.0,0.38,'weighed 1994',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(72,'8a5739de-5d13-50a5-996e-dcab6d388176','2026-11-02',7,'T4','t4',71,'finial, a rowing boat','finial, a rowing boat','casting','original',7,NULL,60.0,25.0,20.0,0.05,'weighed 1994',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(73,'058b6fe8-360f-5e8b-9ad9-c0ec628ea953','2026-11-02',7,'T5','t5',NULL,'handle, left','handle, left','casting','original',7,NULL,50.0,120.0,20.0,0.14,'weighed 1994',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(74,'45f1c622-8e41-59ac-8ccf-902002aec90d','2026-11-02',7,'T6','t6',NULL,'handle, right','handle, right','casting','replacement',7,NULL,50.0,121.0,21.0,0.17,'weighed 1994','1911~','1911~',697613,697977,2,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',32,'Cast from the left; no mark, sharper seams.');
INSERT INTO component VALUES(75,'c21751f0-d40c-515e-8845-7ab80abaa1e1','2026-11-02',7,'T7','t7',NULL,'plinth','plinth','stand','later',23,NULL,160.0,70.0,160.0,0.8,'estimate','early 20th century','1900/1933',693596,706013,0,'words',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(76,'c2f0d7d7-b4b0-5067-a0df-2160031b5788','2026-11-02',8,'L1','l1',NULL,'roof and chimney','roof and chimney','sheet work','original',9,NULL,260.0,240.0,260.0,1.4,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(77,'83102c3e-970f-5b94-82a8-7eb9161fec01','2026-11-02',8,'L2','l2',NULL,'frame','frame','sheet work','original',9,NULL,240.0,300.0,240.0,2.2,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(78,'9b168bc3-072f-5d08-998b-f0b80106fdc6','2026-11-02',8,'G1','g1',NULL,'front pane','front pane','pane','original',24,NULL,180.0,220.0,2.0,0.2,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(79,'5169039b-2d39-50ba-8333-49d84081fccd','2026-11-02',8,'G2','g2',NULL,'left pane','left pane','pane','original',24,NULL,180.0,220.0,2.0,0.2,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(80,'363ee61c-5c17-57bf-bac8-c5cb0e64ff4f','2026-11-02',8,'G3','g3',NULL,'right pane','right pane','pane','replacement',24,NULL,180.0,220.0,3.0,0.3,'estimate','1949','1949',711493,711857,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',28,'Window glass.');
INSERT INTO component VALUES(81,'c6702882-243d-57cb-a403-d31c83170cdb','2026-11-02',8,'G4','g4',NULL,'back pane','back pane','pane','original',24,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','1993','1993',727564,727928,0,'edtf',NULL,'seen',41,'Slipped and broke on the stair.');
INSERT INTO component VALUES(82,'6e30186c-b372-5869-892c-1cd38f5eb407','2026-11-02',8,'R1','r1',NULL,'carrying ring','carrying ring','ring','original',10,NULL,110.0,110.0,9.0,0.3,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(83,'2a9d8b26-5f8f-5cac-9b32-baedc0ca0990','2026-11-02',8,'O1','o1',NULL,'burner','burner','fitting','later',5,NULL,70.0,90.0,70.0,0.25,'estimate','1890/1910','1890/1910',689944,697612,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank','Store 2, drawer 3','seen',41,'Kept apart since 2021: lamp oil.');
INSERT INTO component VALUES(84,'37d6d74d-6152-5208-8698-0c56a8a1ad77','2026-11-02',9,'H1','h1',NULL,'head and shoulders','head and shoulders','casting','original',26,NULL,520.0,640.0,300.0,27.0,'weighed 2018',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(85,'16f175bb-7fbb-5d93-9a20-db487f181abd','2026-11-02',9,'H2','h2',NULL,'socle','socle','casting','original',26,NULL,240.0,150.0,240.0,7.0,'weighed 2018',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(86,'9b1754af-6a67-51f4-9306-acc625502347','2026-11-02',9,'H3','h3',84,'left ear','left ear','fragment','original',26,NULL,40.0,65.0,25.0,0.05,'weighed 2018',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(87,'88069c6d-a900-5aca-9ab4-af1977995171','2026-11-02',9,'H4','h4',84,'lapel','lapel','fragment','original',26,NULL,90.0,70.0,30.0,0.12,'weighed 2018',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 1, rack 9, box c','seen',40,'Fits; left off until the salts are quiet.');
INSERT INTO component VALUES(88,'bda6dc9d-4555-5c5d-9bf4-6a6ff00b39dd','2026-11-02',9,'H5','h5',NULL,'nose','nose','insert','restoration',36,NULL,35.0,50.0,30.0,NULL,NULL,'1899','1899',693231,693595,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,'"New nose to the Captain."');
INSERT INTO component VALUES(89,'5a877886-3653-5a0b-a76e-e2275631195c','2026-11-02',9,'A1','a1',NULL,'armature','armature','armature','original',10,NULL,12.0,480.0,12.0,NULL,NULL,'1861','1861',679352,679716,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'picture only',40,'Seen in the plate; ends 20 mm under the chest.');
INSERT INTO component VALUES(90,'ff73dcf4-825c-53b8-b75c-abab6be47cf7','2026-11-02',10,'B1','b1',NULL,'bowl, larger part','bowl, larger part','fragment','original',25,NULL,95.0,110.0,95.0,0.19,'weighed 1998',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(91,'2d17c3cb-30f8-52b8-ba15-3be272fdd274','2026-11-02',10,'B2','b2',NULL,'bowl, sherd with the bow','bowl, sherd with the bow','fragment','original',25,NULL,60.0,70.0,4.0,0.03,'weighed 1998',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(92,'4d678c45-475c-5f7a-b13b-d987ff654759','2026-11-02',10,'B3','b3',NULL,'bowl, sherd with the flag','bowl, sherd with the flag','fragment','original',25,NULL,40.0,55.0,4.0,0.02,'weighed 1998',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(93,'b01687dd-1f7a-523c-96df-e51f8a785cb2','2026-11-02',10,'B4','b4',NULL,'bowl, rim sherd','bowl, rim sherd','fragment','original',25,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','before 1958','../1957',-9000000,714779,0,'words',NULL,'documented',28,'Missing when bought.');
INSERT INTO component VALUES(94,'7b09fc71-8d69-5531-9a7e-ec5bf1b60a2f','2026-11-02',10,'B5','b5',NULL,'stem and foot','stem and foot','fragment','original',25,NULL,85.0,105.0,85.0,0.24,'weighed 1998',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(95,'3a1b8d3e-8857-5bbd-9684-edbcb2deacfa','2026-11-02',10,'B6','b6',NULL,'chip of the foot','chip of the foot','fragment','original',25,NULL,18.0,9.0,4.0,0.001,'weighed 1998',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Studio 1, vial 7','seen',34,'Fits the foot at four o''clock.');
INSERT INTO component VALUES(96,'fafd9a3e-511b-59c4-8140-1a39725c9f77','2026-11-02',10,'B7','b7',NULL,'rim fill, cast and set','rim fill, cast and set','insert','restoration',76,NULL,32.0,20.0,3.0,0.002,'estimate','1998','1998',729390,729754,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',34,NULL);
INSERT INTO component VALUES(97,'9cd6a232-4e04-5396-9a19-5e3e95a4bff8','2026-11-02',11,'G1','g1',NULL,'pane with the sail','pane with the sail','pane','original',24,NULL,210.0,260.0,3.0,0.4,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(98,'9bf39f9c-104f-5bea-83a2-e901e2cea6ca','2026-11-02',11,'G2','g2',NULL,'pane with the boat','pane with the boat','pane','original',24,NULL,300.0,260.0,3.0,0.6,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(99,'8db42d82-9f01-5623-a997-582673cf77a9','2026-11-02',11,'G3','g3',NULL,'pane with the pilot','pane with the pilot','pane','original',24,NULL,180.0,260.0,3.0,0.35,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(100,'84e4d95a-f800-56ac-98da-9b1f157ce2b6','2026-11-02',11,'G4','g4',NULL,'pane of sky','pane of sky','pane','replacement',24,NULL,310.0,140.0,3.0,0.3,'estimate','1893','1893',691040,691404,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,'Paler blue.');
INSERT INTO component VALUES(101,'bd635fb5-b45e-5652-9b80-87a9589a1f11','2026-11-02',11,'G5','g5',NULL,'border strips','border strips','pane','original',24,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Eleven strips, handled with the lead.');
INSERT INTO component VALUES(102,'e90957f7-961a-56c0-b90a-a0791907fd11','2026-11-02',11,'N1','n1',NULL,'lead net','lead net','lead cames','original',14,NULL,720.0,560.0,12.0,4.1,'estimate',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(103,'95be2ae8-1d81-57bc-822d-58a972672012','2026-11-02',11,'N2','n2',NULL,'copper ties','copper ties','tie','later',6,NULL,NULL,NULL,NULL,NULL,NULL,'1893','1893',691040,691404,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,'Four.');
INSERT INTO component VALUES(104,'250e7c3a-7659-5ff2-b0cc-ff798ffb61a8','2026-11-02',12,'M1','m1',NULL,'tablet, left part','tablet, left part','slab','original',2,NULL,610.0,890.0,45.0,66.0,'weighed 1985',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(105,'72b36d4a-792b-5cd2-b78f-e586e17dca4b','2026-11-02',12,'M2','m2',NULL,'tablet, right part','tablet, right part','slab','original',2,NULL,420.0,890.0,45.0,45.0,'weighed 1985',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(106,'c055fecb-2088-544c-8ae6-be900eb588ce','2026-11-02',12,'M3','m3',NULL,'lower right corner','lower right corner','fragment','original',2,NULL,150.0,130.0,45.0,2.1,'weighed 1985',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(107,'7bb0f599-513d-5265-89fe-07031c000fb4','2026-11-02',12,'M4','m4',NULL,'urn in relief','urn in relief','block','original',2,NULL,260.0,310.0,70.0,11.0,'weighed 1985',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(108,'b1264d6c-fd07-578e-9b41-cc83d6807402','2026-11-02',12,'M5','m5',NULL,'upper left corner','upper left corner','fragment','original',2,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','1940/1945','1940/1945',708205,710396,0,'edtf',NULL,'documented',31,'Fell with the chapel wall.');
INSERT INTO component VALUES(109,'1c4e9095-aae5-5d3e-8f96-013043236570','2026-11-02',12,'M6','m6',NULL,'backing','backing','slab','later',152,NULL,1040.0,900.0,25.0,61.0,'estimate','1906','1906',695787,696151,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',23,NULL);
INSERT INTO component VALUES(110,'4c6a451c-8083-57c7-bde0-377e60d6d07c','2026-11-02',12,'R1','r1',NULL,'dowel behind the urn','dowel behind the urn','dowel','fixing',10,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'suspected',31,'Brown halo through the marble.');
INSERT INTO component VALUES(111,'ba94fdd1-362a-5795-8094-6d39d77b471a','2026-11-02',12,'R2','r2',NULL,'dowel, left to right','dowel, left to right','dowel','fixing',5,NULL,8.0,8.0,80.0,NULL,NULL,'1973','1973',720259,720623,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',29,NULL);
INSERT INTO component VALUES(112,'f55adadb-82fe-581a-a8bb-5879eb2ae2fc','2026-11-02',13,'B1','b1',NULL,'bell','bell','casting','original',4,NULL,360.0,390.0,360.0,41.0,'weighed 2021',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(113,'0d75f642-7cae-5f68-ae74-255232534456','2026-11-02',13,'B2','b2',NULL,'clapper','clapper','casting','replacement',10,NULL,60.0,330.0,60.0,2.4,'weighed 2021','1938','1938',707475,707839,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',26,'Forged by the museum mason.');
INSERT INTO component VALUES(114,'4f5d2152-6657-5e52-90ea-9a1959181e5b','2026-11-02',13,'B3','b3',NULL,'headstock','headstock','block','original',20,NULL,420.0,120.0,110.0,3.6,'weighed 2021',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(115,'d6567fdf-94ba-5acf-8567-01e3fba8d0c0','2026-11-02',13,'B4','b4',NULL,'bolt, front','bolt, front','bolt','fixing',4,NULL,16.0,16.0,190.0,0.3,'estimate','1838','1838',670951,671315,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(116,'6f9dfdc5-8041-5edd-810a-79a9d835da89','2026-11-02',13,'B5','b5',NULL,'bolt, back','bolt, back','bolt','fixing',12,NULL,16.0,16.0,190.0,0.3,'estimate','1938','1938',707475,707839,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',26,NULL);
INSERT INTO component VALUES(117,'5c980d5a-1c2e-547a-b922-b49ce4fe6d14','2026-11-02',13,'B6','b6',NULL,'bell rope','bell rope','rope','original',159,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','1907/1938','1907/1938',696152,707839,0,'edtf',NULL,'documented',26,'"Rope gone."');
INSERT INTO component VALUES(118,'6d85e1d5-f58f-58d8-b0b8-fa016c66f972','2026-11-02',2,'F01','f01',NULL,'foot ring, larger part','foot ring, larger part','fragment','original',15,NULL,NULL,NULL,NULL,0.62,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(119,'b218a048-c2ba-5905-9d46-2b654e09e90c','2026-11-02',2,'F02','f02',NULL,'foot ring, smaller part','foot ring, smaller part','fragment','original',15,NULL,NULL,NULL,NULL,0.35,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(120,'c5548df6-5c6b-544d-957f-2e1de840e75e','2026-11-02',2,'F03','f03',NULL,'lower wall, prow of the first boat','lower wall, prow of the first boat','fragment','original',15,NULL,NULL,NULL,NULL,0.41,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'A chip of glaze is kept in vial 12.');
INSERT INTO component VALUES(121,'01aaec35-fadb-5f05-8604-da5ac5d15e39','2026-11-02',2,'F04','f04',NULL,'lower wall, oar','lower wall, oar','fragment','original',15,NULL,NULL,NULL,NULL,0.22,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(122,'52d73a3a-28fa-51cb-922e-2c0f64be6eb9','2026-11-02',2,'F05','f05',NULL,'lower wall, sea','lower wall, sea','fragment','original',15,NULL,NULL,NULL,NULL,0.31,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(123,'2705b711-c544-544a-9b2d-4d623a686d3d','2026-11-02',2,'F06','f06',NULL,'lower wall, sea and net float','lower wall, sea and net float','fragment','original',15,NULL,NULL,NULL,NULL,0.3,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(124,'75b3a664-2daf-5d53-92e1-d80efae049f9','2026-11-02',2,'F07','f07',NULL,'belly, hull','belly, hull','fragment','original',15,NULL,NULL,NULL,NULL,0.44,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(125,'82a111d5-7c9b-5b7e-92db-3124b3e72103','2026-11-02',2,'F08','f08',NULL,'belly, two fishermen','belly, two fishermen','fragment','original',15,NULL,NULL,NULL,NULL,0.4,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(126,'19d953a9-6496-5389-9c3b-43d808ab0bb8','2026-11-02',2,'F09','f09',NULL,'belly, mast','belly, mast','fragment','original',15,NULL,NULL,NULL,NULL,0.33,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Powdering body at the inner edge.');
INSERT INTO component VALUES(127,'b3bd0a40-769c-5fd5-886f-ee7a9377cf54','2026-11-02',2,'F10','f10',NULL,'belly, sail left','belly, sail left','fragment','original',15,NULL,NULL,NULL,NULL,0.29,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(128,'52badfb5-b549-53e7-8e83-ee62ae61b02b','2026-11-02',2,'F11','f11',NULL,'belly, sail right','belly, sail right','fragment','original',15,NULL,NULL,NULL,NULL,0.36,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(129,'6f029ecd-ffe9-50e9-8d50-e6a60514ac3f','2026-11-02',2,'F12','f12',NULL,'belly, gull','belly, gull','fragment','original',15,NULL,NULL,NULL,NULL,0.38,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,'Bears the stump of the right handle.');
INSERT INTO component VALUES(130,'81f1ec91-998c-52eb-8ffe-87dac3e9beb8','2026-11-02',2,'F13','f13',NULL,'belly, lighthouse','belly, lighthouse','fragment','original',15,NULL,NULL,NULL,NULL,0.34,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(131,'d5e31da9-e917-55bc-9fc0-db0c39fcf679','2026-11-02',2,'F14','f14',NULL,'shoulder, cloud','shoulder, cloud','fragment','original',15,NULL,NULL,NULL,NULL,0.26,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(132,'a9869d61-08ec-55c2-8cb0-5c0e2063e23b','2026-11-02',2,'F15','f15',NULL,'shoulder, cloud and pennant','shoulder, cloud and pennant','fragment','original',15,NULL,NULL,NULL,NULL,0.27,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(133,'eab34a58-37d1-5ef7-b80b-e331c77945fd','2026-11-02',2,'F16','f16',NULL,'shoulder, plain','shoulder, plain','fragment','original',15,NULL,NULL,NULL,NULL,0.2,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(134,'fa91ecdc-7910-52f9-8ca4-fc94886471b9','2026-11-02',2,'F17','f17',NULL,'neck, front','neck, front','fragment','original',15,NULL,NULL,NULL,NULL,0.24,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(135,'406c9fd6-95fa-5705-b4e9-b44d93d9b40a','2026-11-02',2,'F18','f18',NULL,'rim, front','rim, front','fragment','original',15,NULL,NULL,NULL,NULL,0.11,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(136,'b644935d-0c22-586b-b477-f79fd345774b','2026-11-02',2,'F19','f19',NULL,'rim, back','rim, back','fragment','original',15,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank','[1891..1952]','[1891..1952]',690309,712953,0,'edtf',NULL,'picture only',25,'Number 19 in the print of 1890. Not there when the joins were opened in 1952.');
INSERT INTO component VALUES(137,'d0c6a0eb-09c8-5fe5-9516-38e9d0e719d3','2026-11-02',2,'F20','f20',NULL,'sherd with a blue line','sherd with a blue line','fragment','uncertain',15,NULL,NULL,NULL,NULL,0.05,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank','Store 1, cabinet 2, box d','seen',NULL,'Numbered 20 by Miss Lisle; blue and body differ. Perhaps of another vase.');
INSERT INTO component VALUES(138,'88c10598-50b4-53f7-84e8-f7f55fbe06da','2026-11-02',2,'H1','h1',NULL,'left handle, a rope','left handle, a rope','limb','original',15,NULL,60.0,170.0,40.0,0.31,'weighed 1996',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',NULL,NULL);
INSERT INTO component VALUES(139,'f56249a4-a5b5-52d7-aa90-4b70f26ce502','2026-11-02',2,'I01','i01',NULL,'rim, back, in plaster','rim, back, in plaster','insert','restoration',36,NULL,140.0,60.0,9.0,0.09,'estimate','1891','1891',690309,690673,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',24,'Cast to take the place of F19, or F19 never fitted.');
INSERT INTO component VALUES(140,'fb121c14-9699-52ab-9b7d-6b6ee77dd7d7','2026-11-02',2,'I02','i02',NULL,'right handle, in plaster','right handle, in plaster','insert','restoration',36,NULL,62.0,170.0,40.0,0.24,'weighed 1996','1936','1936',706744,707109,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,'seen',26,'Cast from the left, so the rope twists the wrong way.');
INSERT INTO component VALUES(141,'3d544888-6825-590a-8648-b899522cfb2a','2026-11-02',2,'K1','k1',NULL,'staple in the lower wall','staple in the lower wall','staple','fixing',5,NULL,18.0,2.0,2.0,0.002,'estimate','1891','1891',690309,690673,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank','Store 1, cabinet 2, box d','seen',24,'"3 rivets"; two more are only holes now.');
CREATE TABLE intervention (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	treatment_id INTEGER, 
	kind TEXT, 
	technique TEXT, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	date_basis TEXT, 
	source_id INTEGER, 
	recorded_words TEXT, 
	recorded_edtf TEXT, 
	recorded_earliest INTEGER NOT NULL, 
	recorded_latest INTEGER NOT NULL, 
	recorded_flags INTEGER NOT NULL, 
	recorded_derived TEXT NOT NULL, 
	recorded_by_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_intervention_kind_known CHECK (kind IN ('examine', 'sample', 'clean', 'desalinate', 'consolidate', 'join', 'take apart', 'fill', 'integrate', 'coat', 'support', 'remove earlier work', 'other')), 
	CONSTRAINT ck_intervention_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT ck_intervention_recorded_in_order CHECK (recorded_earliest <= recorded_latest), 
	CONSTRAINT fk_intervention_object_id_treatment_id FOREIGN KEY(object_id, treatment_id) REFERENCES treatment (object_id, id), 
	CONSTRAINT fk_intervention_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_intervention_recorded_by_id FOREIGN KEY(recorded_by_id) REFERENCES person (id), 
	CONSTRAINT fk_intervention_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_intervention_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_intervention_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_intervention_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO intervention VALUES(1,'813cc587-640d-5543-b364-cac596850659','2026-11-02',1,'I1741-1',1,'join','bedding in trass-lime; cramps run in with lead','1741','1741',635523,635887,0,'edtf','account',2,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'"Set in tarras, the cramps run with lead 61 lb."');
INSERT INTO intervention VALUES(2,'70381909-889a-51be-a011-1fafdc71dfe7','2026-11-02',1,'I1741-2',1,'fill','oil mastic pressed into the seams','1741','1741',635523,635887,0,'edtf','account',2,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(3,'85c776d1-3351-5c0f-a94d-7004037d494b','2026-11-02',1,'I1741-3',1,'support','masks hung on iron armatures, leaded','1741','1741',635523,635887,0,'edtf','account',2,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'The East mask has no armature that any plate shows.');
INSERT INTO intervention VALUES(4,'6ccff2e3-cda2-5d6c-9c11-b263c451a9ed','2026-11-02',1,'I1741-4',1,'coat','brown patination; gilding of the flutes in oil','1741','1741',635523,635887,0,'edtf','account',2,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(5,'05927406-1705-57bd-b35a-70a6ef259876','2026-11-02',1,'I1868-1',2,'take apart','joints wedged and sawn; carried four miles on two drays','summer 1868','1868-22',682060,682151,0,'words','bill of November 1868',3,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'Hands unknown: the bill charges for Crane''s men, the letter thanks the estate''s.');
INSERT INTO intervention VALUES(6,'72ebc5bc-52db-5e59-95f4-50ad496861b6','2026-11-02',1,'I1868-2',2,'join','reset in Roman cement','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf','bill',3,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'"From September; best Roman cement, 11 casks."');
INSERT INTO intervention VALUES(7,'af5aba8f-a300-5c56-a294-10f71c8c4f16','2026-11-02',1,'I1868-3',2,'join','iron dowel set in melted sulphur','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf','bill',3,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'"Brimstone 14 lb."');
INSERT INTO intervention VALUES(8,'863c2b37-82b0-5121-93a6-c76aa853f902','2026-11-02',1,'I1868-4',2,'join','broken ornament stuck dry with shellac','before 1872','../1871',-9000000,683368,0,'words','letter',4,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'Only the letter knows of it. Not by the mason if the bill is whole.');
INSERT INTO intervention VALUES(9,'271790de-6bd1-5155-8c5f-4b67f268eef8','2026-11-02',1,'I1868-5',2,'other','urn run in cement; South mask cast new','1868?','1868?',681908,682273,1,'edtf','bill; style and alloy',3,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,'The urn is in the bill, the mask is not.');
INSERT INTO intervention VALUES(10,'70de6790-eadf-549a-8c1f-a2bad263697a','2026-11-02',1,'I1868-6',2,'coat','cold linseed oil over stone and new work','1868~','1868~',681908,682273,2,'edtf','letter: "and all was oiled"',4,'2024-03-04','2024-03-04',738949,738949,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(11,'07f7e695-577c-5e8a-ae89-ff5f6a7f0d55','2026-11-02',1,'I1934-1',3,'clean','washed with caustic soda, one in ten, hosed off','1934-04','1934-04',706104,706133,0,'edtf','ledger p. 39',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'"Two washings. Came up very white."');
INSERT INTO intervention VALUES(12,'04934a65-eed2-59cd-a32c-4eae5cb09c4f','2026-11-02',1,'I1934-2',3,'clean','muriatic acid on the scale in the basin','May 1934','1934-05',706134,706164,0,'words','ledger p. 40',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(13,'a2ba673e-0175-5948-a162-8d74d40b5419','2026-11-02',1,'I1934-3',3,'remove earlier work','old pointing raked out an inch deep','May 1934','1934-05',706134,706164,0,'words','ledger p. 40',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'"Dolphin shakes when the cart goes by."');
INSERT INTO intervention VALUES(14,'d7008136-eb9b-5e95-801d-54a19d14a347','2026-11-02',1,'I1934-4',3,'fill','pointed in Portland cement, three and one','14 June 1934','1934-06-14',706178,706178,0,'words','ledger p. 41',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(15,'c789334f-2a57-56ed-8380-4e03daf2c9d7','2026-11-02',1,'I1934-5',3,'fill','Portland cement fills; tail fin set in cement','1934-06/1934-07','1934-06/1934-07',706165,706225,0,'edtf','ledger p. 43',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(16,'737e37d1-2a2e-5bb5-b610-201395b82ba8','2026-11-02',1,'I1934-6',3,'coat','masks blacked in oil and lamp black','1934-09','1934-09',706257,706286,0,'edtf','ledger p. 44',8,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(17,'8c531044-f76a-511a-8003-8246077fad33','2026-11-02',1,'I1940-1',NULL,'coat','bitumen brushed into the basin','between 1936 and 1957','1936/1957',706744,714779,0,'words','absent from the ledger, present in the negatives',10,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'Undocumented. Somebody was fighting a leak.');
INSERT INTO intervention VALUES(18,'f1dd0073-f181-5464-b687-d5a8bfad94f3','2026-11-02',1,'I1949-1',NULL,'join','tail fin stuck with cellulose nitrate','1947-08/1957-09','1947-08/1957-09',710974,714687,0,'edtf','fin absent in the print of 1947, present in the negatives of 1957',10,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(19,'a78105f5-f83e-506d-972f-d0aef06ef884','2026-11-02',1,'I1958-1',4,'take apart','lifted by chain hoist; basin, lip and dolphins on one cradle','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided','card',11,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'The upper slabs and the shell travelled together.');
INSERT INTO intervention VALUES(20,'640bcd38-063c-57e1-a12d-f90daeb63a95','2026-11-02',1,'I1958-2',4,'join','set in plaster and lime putty','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf','card',11,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(21,'bb3ab8cd-ce7a-533c-b280-8fa219d70e0f','2026-11-02',1,'I1958-3',4,'fill','outlet stopped with plaster and rag','1958-05','1958-05',714900,714930,0,'edtf','card',11,'2024-03-05','2024-03-05',738950,738950,0,'edtf',18,'"Water off for good."');
INSERT INTO intervention VALUES(22,'2381cedc-30d3-5269-a95d-89fda2832bfe','2026-11-02',1,'I1967-1',5,'take apart','cramp sawn through, lip opened by wedges','1967-03-13','1967-03-13',718138,718138,0,'edtf','card',12,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(23,'9afef365-44d8-5a13-8fa6-f03f11b5d251','2026-11-02',1,'I1967-2',5,'join','polyester resin and brass pins','1967-03-14','1967-03-14',718139,718139,0,'edtf','card',12,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,'Stone washed the day before and still damp. In 1994 he did not remember any first coat.');
INSERT INTO intervention VALUES(24,'0ff7aa0a-8d00-5a76-976f-96ad2f649bec','2026-11-02',1,'I1967-3',5,'fill','polyester stopping with marble powder','1967-03-15','1967-03-15',718140,718140,0,'edtf','card',12,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(25,'99bb3c15-0893-53eb-96c9-6cb8170aae77','2026-11-02',1,'I1967-4',5,'join','scroll pulled off, reset in polyester','1967-03','1967-03',718126,718156,0,'edtf','card',12,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(26,'51ce9160-02ee-50c3-ba13-f3b0f6367f78','2026-11-02',1,'I1976-1',6,'consolidate','brushed on until refused, three evenings','1976-08/1976-09','1976-08/1976-09',721567,721627,0,'edtf','card',13,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,'Card says silane, invoice says acrylic. How far it ran into the seat of the dolphin is not known.');
INSERT INTO intervention VALUES(27,'54c0885d-63f2-5101-a356-306eb8d3e348','2026-11-02',1,'I1976-2',6,'clean','EDTA poultice on scale','1976-10','1976-10',721628,721658,0,'edtf','card',13,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(28,'d0b3abbd-1234-5cc6-9263-c7ba4ba8ae77','2026-11-02',1,'I1976-3',6,'desalinate','paper pulp and deionised water, two packs','autumn 1976','1976-23',721598,721688,0,'words','card',13,'2024-03-06','2024-03-06',738951,738951,0,'edtf',18,'No readings written down.');
INSERT INTO intervention VALUES(29,'df7d0202-4f63-513c-a081-1f714324a862','2026-11-02',1,'I1989-1',7,'examine','sounding by hammer and feeler gauge','1989-03-14','1989-03-14',726175,726175,0,'edtf','report p. 2',15,'1989-07','1989-07',726284,726314,0,'edtf',12,'Right dolphin rocks 0.4 mm. Left alone for want of time.');
INSERT INTO intervention VALUES(30,'cda08b7f-ea01-5889-a1d9-43584b6d1918','2026-11-02',1,'I1989-2',7,'take apart','shell and left dolphin lifted, slabs parted','1989-05-02/1989-05-09','1989-05-02/1989-05-09',726224,726231,0,'edtf','report p. 5',15,'1989-07','1989-07',726284,726314,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(31,'6d20c9a4-b65c-560a-a463-e9a6e75feea0','2026-11-02',1,'I1989-3',7,'remove earlier work','Roman and Portland cement cut from the beds','1989-05-10/1989-05-12','1989-05-10/1989-05-12',726232,726234,0,'edtf','report p. 6',15,'1989-07','1989-07',726284,726314,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(32,'5c2ff6b9-88de-5ddc-b55e-59300dae46f6','2026-11-02',1,'I1989-4',7,'coat','acrylic barrier, 10 %, one coat on each face','1989-05-16','1989-05-16',726238,726238,0,'edtf','report p. 9',15,'1989-07','1989-07',726284,726314,0,'edtf',12,'Started 9:30. The resin went on after lunch.');
INSERT INTO intervention VALUES(33,'65aa1a77-6e8e-5bfc-8f3a-55bd15c5c21f','2026-11-02',1,'I1989-5',7,'join','epoxy and stainless threaded rod','1989-05-16','1989-05-16',726238,726238,0,'edtf','report p. 9',15,'1989-07','1989-07',726284,726314,0,'edtf',12,'Same day as the barrier.');
INSERT INTO intervention VALUES(34,'338dce7f-cb97-5118-95d9-d2309449e19a','2026-11-02',1,'I1989-6',7,'join','epoxy injected at the right dolphin from the left edge','1989-05-18','1989-05-18',726240,726240,0,'edtf','report p. 11',15,'1989-07','1989-07',726284,726314,0,'edtf',12,'"About 60 ml taken." Not opened. Barrier: recorded as none.');
INSERT INTO intervention VALUES(35,'72d062cb-75f1-5364-9316-f58815fa0c7b','2026-11-02',1,'I1989-7',7,'integrate','fills toned in acrylic paint','June 1989','1989-06',726254,726283,0,'words','report p. 15',15,'1989-07','1989-07',726284,726314,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(36,'c22d1885-d173-5da8-add4-8d2791abcaba','2026-11-02',1,'I1989-8',7,'coat','clear acrylic lacquer on the masks','June 1989','1989-06',726254,726283,0,'words','report p. 17',15,'1989-07','1989-07',726284,726314,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(37,'1ba65751-7c78-51f9-b203-ad5b9392d8dd','2026-11-02',1,'I2011-1',8,'examine','radiography, 200 kV, 14 plates','2011-10-04','2011-10-04',734414,734414,0,'edtf','plates',17,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Finds K3 where nobody had looked, and two pins nobody had set.');
INSERT INTO intervention VALUES(38,'2aec9947-05eb-57a0-a42b-8def54326eb4','2026-11-02',1,'I2011-2',8,'take apart','back slabs lifted as one from the plinth','2011-09-26','2011-09-26',734406,734406,0,'edtf','report p. 4',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Plinth, pedestal and basin went on one skate, the back slabs on another.');
INSERT INTO intervention VALUES(39,'791803ea-ca61-576e-9534-32b570604aa4','2026-11-02',1,'I2012-1',8,'sample','powder from the front edge of the lip, 0.2 g; infrared','2012-01-18','2012-01-18',734520,734520,0,'edtf','report p. 6',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Bands of an acrylic ester, weak; a silicate band hides under the stone''s own.');
INSERT INTO intervention VALUES(40,'d8d37031-8a90-50bb-96e6-5c9a16c25cc2','2026-11-02',1,'I2012-2',8,'take apart','left dolphin: acetone through the edge for nine days, then wedges','2012-02-06/2012-02-14','2012-02-06/2012-02-14',734539,734547,0,'edtf','report p. 8',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Released clean through the barrier.');
INSERT INTO intervention VALUES(41,'8c0bf897-49c0-50ed-aefb-b5ccd271fb03','2026-11-02',1,'I2012-3',8,'take apart','shell, left half: acetone, then warm air','2012-02-20/2012-02-21','2012-02-20/2012-02-21',734553,734554,0,'edtf','report p. 9',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Pulled stone: 140 cm2 of B09, up to 4 mm deep, came away on the resin.');
INSERT INTO intervention VALUES(42,'2f412cc9-2e11-5482-923f-96675356fe7f','2026-11-02',1,'I2012-4',8,'remove earlier work','epoxy pared off by chisel and warm air; barrier swabbed','2012-02-22/2012-03-09','2012-02-22/2012-03-09',734555,734571,0,'edtf','report p. 10',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(43,'7dc60ad1-8b45-530d-bbf5-e703bbadb6a6','2026-11-02',1,'I2012-5',8,'coat','acrylic barrier, 22 %, two coats on each face','2012-03-12/2012-03-13','2012-03-12/2012-03-13',734574,734575,0,'edtf','report p. 12',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,'Left open to dry until 24 April.');
INSERT INTO intervention VALUES(44,'6c0e6569-d9d8-5a57-bed8-ef7a0ac0105c','2026-11-02',1,'I2012-6',8,'join','epoxy with silica; rod R1 in a sleeve','2012-04-24','2012-04-24',734617,734617,0,'edtf','report p. 13',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(45,'0e258258-57b9-5861-bd09-3d80d1900868','2026-11-02',1,'I2012-7',8,'fill','acrylic-bound limestone fills; cement pared at the right dolphin','2012-05','2012-05',734624,734654,0,'edtf','report p. 15',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(46,'6e229754-ba66-5b86-b731-3a35545ac815','2026-11-02',1,'I2012-8',8,'remove earlier work','lacquer and black paint off the masks','2012-06/2012-07','2012-06/2012-07',734655,734715,0,'edtf','report p. 18',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(47,'fd460382-ce4b-5a6b-ac64-b591edbbb61f','2026-11-02',1,'I2012-9',8,'coat','microcrystalline wax, warmed, two coats','July 2012','2012-07',734685,734715,0,'words','report p. 19',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(48,'dbf11ea6-93c4-5aed-91ae-f90ff5d4b5d4','2026-11-02',1,'I2012-10',8,'take apart','West mask taken down, its armature drawn','2012-06-19','2012-06-19',734673,734673,0,'edtf','report p. 18',18,'2012-11-30','2012-11-30',734837,734837,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(49,'53bd2034-be0f-568c-ad36-9f6970f67d6a','2026-11-02',1,'I2019-1',NULL,'examine','crack gauge set across the seat of the right dolphin','2019-06-12','2019-06-12',737222,737222,0,'edtf','note',20,'2019-06-12','2019-06-12',737222,737222,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(50,'b81c66e8-ce4f-5e07-9925-ee4620611146','2026-11-02',1,'I2026-1',9,'examine','condition survey, all faces within reach','2026-09-14/2026-09-18','2026-09-14/2026-09-18',739873,739877,0,'edtf','survey',22,'2026-09-18','2026-09-18',739877,739877,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(51,'13887c1e-b174-5c2b-85ac-eedda3c5803a','2026-11-02',1,'I2026-2',9,'support','gilded flutes faced with tissue over cyclododecane','2026-10-19','2026-10-19',739908,739908,0,'edtf','day sheet',NULL,'2026-10-19','2026-10-19',739908,739908,0,'edtf',17,'Temporary. To come off after the move.');
INSERT INTO intervention VALUES(52,'14dd9698-d09e-596c-ad31-4366da999928','2026-11-02',3,'I1894-1',10,'join','animal glue, tied with string','winter 1894','1894-24',691739,691828,0,'words','daybook',23,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,'"Mermade dish glewed, 5 peeces."');
INSERT INTO intervention VALUES(53,'66700353-c415-5042-a95d-314ab2b9ecfb','2026-11-02',3,'I1894-2',10,'fill','plaster of Paris, painted over','winter 1894','1894-24',691739,691828,0,'words','daybook',23,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(54,'42f09dc9-0193-549e-be61-4e2220a3cbe8','2026-11-02',3,'I1910-1',NULL,'join','bottom sherd stuck once more','[1908..1911]','[1908..1911]',696517,697977,0,'edtf','daybook, last volume, undated page',23,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,'"Gum."');
INSERT INTO intervention VALUES(55,'19244009-3b61-5279-9bee-4a3ccf7a35bb','2026-11-02',3,'I1930-1',NULL,'coat','wax over everything','193X','193X',704553,708204,0,'edtf','seen under the overpaint of 1992',44,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(56,'b2a65790-87da-53a6-9382-c37bbff14f80','2026-11-02',3,'I1959-1',11,'join','white glue, strapping tape','1959-03','1959-03',715204,715234,0,'edtf','card',28,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(57,'aa287b34-df3d-5f37-b05b-fc34c6f7224b','2026-11-02',3,'I1992-1',12,'clean','wax and overpaint swabbed off the front','1992-02-17/1992-03-06','1992-02-17/1992-03-06',727245,727263,0,'edtf','report',44,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(58,'230b5467-8b2c-5638-b8ed-9b264276068b','2026-11-02',3,'I1992-2',12,'remove earlier work','plaster cut out dry','1992-03-10','1992-03-10',727267,727267,0,'edtf','report',44,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(59,'7a4fac43-53fb-56bb-a399-b1418743e0cd','2026-11-02',3,'I1992-3',12,'fill','acrylic fill, toned','1992-04','1992-04',727289,727318,0,'edtf','report',44,'2024-05-13','2024-05-13',739019,739019,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(60,'4db8fb58-2180-5ae6-98ba-77e5af929808','2026-11-02',3,'I2013-1',NULL,'examine','infrared survey of joins','2013-05-14','2013-05-14',735002,735002,0,'edtf','survey',37,'2013-05-17','2013-05-17',735005,735005,0,'edtf',15,'No nitrate here.');
INSERT INTO intervention VALUES(61,'c0300fe7-84db-5227-a35a-b7d3c9ac96ff','2026-11-02',4,'I1911-1',NULL,'join','figure came stuck','before 1911','../1910',-9000000,697612,0,'words','first noted on arrival',23,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'Hands unknown: a dealer''s, perhaps.');
INSERT INTO intervention VALUES(62,'06e507fb-53ad-5d9d-8502-c1ffdc5f3507','2026-11-02',4,'I1972-1',13,'take apart','neck and base soaked in hot water','1972-11-07','1972-11-07',720204,720204,0,'edtf','card',29,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(63,'c3a332bc-865b-519b-b04d-1e879af1fc76','2026-11-02',4,'I1972-2',13,'join','epoxy at base, neck and net','8 November 1972','1972-11-08',720205,720205,0,'words','card',29,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'"Araldite, the rapid." Dowel: no word.');
INSERT INTO intervention VALUES(64,'32c9d367-a787-5dc2-882d-efc36c04af98','2026-11-02',4,'I1984-1',NULL,'join','instant glue on the net corner','1980s','198X',722815,726467,0,'words','shine under ultraviolet',35,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(65,'e22ac13c-4f84-556c-87cf-5b029da7079e','2026-11-02',4,'I2003-1',14,'remove earlier work','old epoxy swollen and picked at the base','2003-07','2003-07',731397,731427,0,'edtf','report',35,'2003-09','2003-09',731459,731488,0,'edtf',13,'Given up after four days.');
INSERT INTO intervention VALUES(66,'c0702985-c274-5e0c-b308-e2a13cef6863','2026-11-02',4,'I2003-2',14,'join','cast hand in its sleeve','2003-08-20','2003-08-20',731447,731447,0,'edtf','report',35,'2003-09','2003-09',731459,731488,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(67,'0277f9fb-0ae9-5825-9ceb-2c341773b7d3','2026-11-02',4,'I2003-3',14,'integrate','net corner and sleeve toned','2003-08','2003-08',731428,731458,0,'edtf','report',35,'2003-09','2003-09',731459,731488,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(68,'61c66a07-8508-556f-b85d-0e45dc6f154c','2026-11-02',5,'I1660-1',NULL,'join','dovetails glued','1660s','166X',605938,609590,0,'words','style',1,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(69,'35e207ff-8240-50a0-bcf2-0ca8aea8c1b2','2026-11-02',5,'I1895-1',NULL,'join','right hinge replaced and screwed','1890s','189X',689944,693595,0,'words','daybook, looking back',23,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(70,'444beb0f-6db5-56ef-aea7-a6d2b0d4af9a','2026-11-02',5,'I1904-1',15,'fill','patch let in with glue','1904-05','1904-05',695177,695207,0,'edtf','daybook',23,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(71,'ebb85300-f5f3-5301-90f6-39dbde51e5f9','2026-11-02',5,'I1904-2',15,'coat','raw linseed oil, rubbed','1904-06','1904-06',695208,695237,0,'edtf','daybook',23,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'"Fed till it would eat no more."');
INSERT INTO intervention VALUES(72,'038efab3-3f27-5a2b-83ea-fd74114f83e6','2026-11-02',5,'I1921-1',16,'other','against worm: mercury in spirit, then lamp oil','1921-06','1921-06',701417,701446,0,'edtf','typed list',27,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(73,'cddbe7d4-e115-5246-81e8-9c38479f1614','2026-11-02',5,'I1935-1',NULL,'coat','wax polish, many times','1935/1960','1935/1960',706379,715875,0,'edtf','cards of others speak of it',28,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(74,'186fe478-0101-59d7-849d-fc2befdb0fc0','2026-11-02',5,'I1955-1',NULL,'fill','worm holes stopped with nitrate filler','by 1957','../1957',-9000000,714779,0,'words','card',28,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(75,'797b8dde-d714-5b8a-bfef-c1fd4ddddd14','2026-11-02',5,'I1962-1',17,'consolidate','run in from the lower edge','1962','1962',716241,716605,0,'edtf','card',29,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'"P.V.A., two tins."');
INSERT INTO intervention VALUES(76,'14497f9b-7ffa-51fc-9d28-1f677d80694f','2026-11-02',5,'I1979-1',NULL,'other','gas chamber, with forty other pieces','late 1970s','1977/1979',721720,722814,0,'words','no list found',29,'2024-05-14','2024-05-14',739020,739020,0,'edtf',18,'Told, not written.');
INSERT INTO intervention VALUES(77,'3cc0e615-5851-51d8-8c83-e4c60971b7c5','2026-11-02',5,'I2015-1',18,'examine','mercury and arsenic at thirty points','2015-02-24/2015-02-26','2015-02-24/2015-02-26',735653,735655,0,'edtf','report',39,'2015-02-26','2015-02-26',735655,735655,0,'edtf',15,NULL);
INSERT INTO intervention VALUES(78,'8b66fef0-65cb-52ec-bf86-97b61fa3da73','2026-11-02',5,'I2015-2',18,'clean','vacuum through a fine filter, damp swab','2015-03','2015-03',735658,735688,0,'edtf','report',39,'2015-03','2015-03',735658,735688,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(79,'81abaf6d-41c8-5994-90e9-539c11b9e057','2026-11-02',6,'I1838-1',NULL,'coat','painted for the launch','1838','1838',670951,671315,0,'edtf','shipyard style',1,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(80,'ec450756-a26f-5e7a-9f78-adfa6e6e88fd','2026-11-02',6,'I1880-1',NULL,'coat','repainted white, cheeks pink','c. 1880','1880~',686291,686656,2,'words','cross-section',38,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(81,'7be50748-b800-5fba-b21f-1ec50945a8d8','2026-11-02',6,'I1907-1',NULL,'coat','tarred against the weather','1907/1926','1907/1926',696152,703456,0,'edtf','photograph of the yard',38,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(82,'793d9c76-32da-5f7c-ad74-3ebf70115bc4','2026-11-02',6,'I1926-1',19,'join','splice set in glue; neck packed in putty','1926','1926',703092,703456,0,'edtf','ledger',26,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(83,'fe25f448-bd4a-5b6c-ad93-4a1571fd4aba','2026-11-02',6,'I1926-2',19,'coat','red lead, two coats of gloss paint','1926','1926',703092,703456,0,'edtf','ledger',26,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(84,'4249c7c1-b6a3-596a-9232-ecf1d2969736','2026-11-02',6,'I1968-1',20,'fill','rot pocket poured with polyester','1968-08','1968-08',718645,718675,0,'edtf','card',29,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,'"Took eleven pints."');
INSERT INTO intervention VALUES(85,'2d652899-f815-51c2-886d-8d668ceca019','2026-11-02',6,'I1968-2',20,'coat','creosote on the back','[1968,1969]','[1968,1969]',718432,719162,0,'edtf','card',29,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(86,'de0b8304-ae3f-5b40-bf57-091b7840f15b','2026-11-02',6,'I1977-1',21,'consolidate','flakes laid with poly(vinyl butyral)','1977-11/1978-01','1977-11/1978-01',722024,722115,0,'edtf','card',30,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(87,'e3b584cb-c9b2-5fa6-b345-2e2670131c94','2026-11-02',6,'I2014-1',22,'examine','cross-sections, magnet, moisture meter','2014-03','2014-03',735293,735323,0,'edtf','report',38,'2014-10','2014-10',735507,735537,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(88,'02991908-374d-5dd4-92cb-735e539c0307','2026-11-02',6,'I2014-2',22,'clean','gloss paint taken down on the left cheek','2014-05/2014-06','2014-05/2014-06',735354,735414,0,'edtf','report',38,'2014-10','2014-10',735507,735537,0,'edtf',16,'A window of 9 by 12 cm.');
INSERT INTO intervention VALUES(89,'88969519-85b6-5b07-863a-9b2c38987c20','2026-11-02',6,'I2014-3',22,'support','steel cradle under the scroll, felt pads','2014-10','2014-10',735507,735537,0,'edtf','report',38,'2014-10','2014-10',735507,735537,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(90,'ecb9d1ef-e3bf-5c15-8495-f23691264f0a','2026-11-02',6,'I2014-4',22,'fill','neck gap packed with cork in acrylic','2014-09','2014-09',735477,735506,0,'edtf','report',38,'2014-10','2014-10',735507,735537,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(91,'2f42a611-0131-565c-94f8-42fb0936d093','2026-11-02',7,'I1886-1',NULL,'join','soldered in the making','1886','1886',688483,688847,0,'edtf','hallmark',1,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(92,'6cb5b414-5ac1-562a-9df4-679fc90f7e7a','2026-11-02',7,'I1911-1',NULL,'join','new handle soldered on','1911~','1911~',697613,697977,2,'edtf','inscription under the foot',1,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(93,'ca4f4dba-38be-5a9a-95e2-754ebbf2e47d','2026-11-02',7,'I1955-1',23,'clean','dipped','1955','1955',713684,714048,0,'edtf','card',28,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(94,'9545d7fc-65a6-5b93-a16f-b3b8256719a2','2026-11-02',7,'I1955-2',23,'coat','lacquer brushed on','1955','1955',713684,714048,0,'edtf','card',28,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,'"Two coats of lacquer, the good one."');
INSERT INTO intervention VALUES(95,'0ec87411-ec59-5936-b339-aaf197185710','2026-11-02',7,'I1976-1',NULL,'join','finial soldered with a gun','mid 1970s','1974/1976',720624,721719,0,'words','bright solder',32,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(96,'7fca8b1d-e766-59fd-a3a5-25a928dc88dd','2026-11-02',7,'I1994-1',24,'remove earlier work','lacquer off in acetone','1994-02','1994-02',727960,727987,0,'edtf','report',32,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(97,'2a0da147-3a2d-5d5f-962e-f04ff9ef3dfd','2026-11-02',7,'I1994-2',24,'coat','wax','1994-03','1994-03',727988,728018,0,'edtf','report',32,'2024-05-15','2024-05-15',739021,739021,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(98,'c99a5253-ad89-56d1-a357-6a10b8f60933','2026-11-02',7,'I2008-1',25,'clean','chalk and water, wax off first','2008-10','2008-10',733316,733346,0,'edtf','report',36,'2008-11','2008-11',733347,733376,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(99,'11e89cb0-2524-5b33-8a56-8698748b583e','2026-11-02',7,'I2008-2',25,'coat','cellulose nitrate lacquer, sprayed','2008-11-05','2008-11-05',733351,733351,0,'edtf','report',36,'2008-11','2008-11',733347,733376,0,'edtf',14,NULL);
INSERT INTO intervention VALUES(100,'6ccf7973-e661-5b8f-a7d7-df76c828e125','2026-11-02',7,'I2024-1',NULL,'examine','lacquer looked at under ultraviolet','2024-01-22','2024-01-22',738907,738907,0,'edtf','note',NULL,'2024-01-22','2024-01-22',738907,738907,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(101,'9641cdf9-670e-53d7-a399-15e7fd7dd9a0','2026-11-02',8,'I1850-1',NULL,'join','panes puttied, ring soldered','1850~','1850~',675334,675698,2,'edtf','style',1,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(102,'d211bd34-9900-5cae-a4a5-94cbbcd07f88','2026-11-02',8,'I1850-2',NULL,'coat','black oil paint over red lead','1850~','1850~',675334,675698,2,'edtf','cross-section',41,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(103,'c2f66dca-6dad-51e2-bb83-154ac541442f','2026-11-02',8,'I1949-1',26,'fill','new pane puttied','1949','1949',711493,711857,0,'edtf','card',28,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(104,'a48050a2-7f74-5751-a366-c0b1e2695fa3','2026-11-02',8,'I1949-2',26,'coat','roof blacked','1949','1949',711493,711857,0,'edtf','card',28,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(105,'6f7946eb-506f-555d-9da0-1346893551ba','2026-11-02',8,'I1991-1',27,'join','panes run round with silicone','c. 1991','1991~',726833,727197,2,'words','smell and date stamp on the tube found inside',41,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,'Hands unknown: no card.');
INSERT INTO intervention VALUES(106,'456100b2-4edc-5d6c-b669-687e55db6319','2026-11-02',8,'I2021-1',28,'remove earlier work','silicone cut out','2021-06-08','2021-06-08',737949,737949,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(107,'e972f722-310f-5d67-a4a8-6f4104dbdfd7','2026-11-02',8,'I2021-2',28,'join','front pane on acrylic beads','2021-06-10','2021-06-10',737951,737951,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(108,'38dbb4f1-1064-5b03-bc95-565da50744fe','2026-11-02',8,'I2021-3',28,'coat','wax on roof','2021-07','2021-07',737972,738002,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(109,'b1823339-b8ad-5521-b3ec-54bc2c358ef1','2026-11-02',8,'I2021-4',28,'take apart','burner lifted out','2021-05-20','2021-05-20',737930,737930,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(110,'1edf4f5b-3fed-5f93-979f-e8cba463d441','2026-11-02',9,'I1861-1',NULL,'coat','sealed in shellac','1861','1861',679352,679716,0,'edtf','maker''s practice',1,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(111,'aa6f3bab-b9e5-5b89-870c-51b40d7bce85','2026-11-02',9,'I1861-2',NULL,'join','bust set on the socle in plaster','1861','1861',679352,679716,0,'edtf','maker''s practice',1,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(112,'98343fb5-31c7-5738-b076-a352c24d80bc','2026-11-02',9,'I1899-1',29,'fill','new nose modelled','1899-02','1899-02',693262,693289,0,'edtf','daybook',23,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(113,'d2e0b4c3-5673-5429-bc25-50926c71c10f','2026-11-02',9,'I1899-2',29,'coat','bronze powder in gum','1899-02','1899-02',693262,693289,0,'edtf','daybook',23,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(114,'90a26983-f5b1-5f27-850d-4122073761b2','2026-11-02',9,'I1950-1',NULL,'join','ear stuck','between 1938 and 1952','1938/1952',707475,712953,0,'words','absent from the photograph of 1938, present in 1952',30,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(115,'ff02296e-49f1-5aa7-a19e-4585c9af64dd','2026-11-02',9,'I1976-1',30,'clean','bronzing steamed off, face washed','1976-05','1976-05',721475,721505,0,'edtf','card',30,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(116,'a8fcf828-4cc2-55fe-903c-cb3be68b6b89','2026-11-02',9,'I1976-2',30,'coat','whitened in poly(vinyl alcohol) and chalk','1976-06','1976-06',721506,721535,0,'edtf','card',30,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(117,'232ecd51-5103-5880-9d2f-c52b434610de','2026-11-02',9,'I2018-1',31,'examine','radiograph of the chest','2018-01-16','2018-01-16',736710,736710,0,'edtf','report',40,'2018-07','2018-07',736876,736906,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(118,'a8e8e7e6-12e2-5c69-bd9e-f84ca2c6bebf','2026-11-02',9,'I2018-2',31,'consolidate','acrylic run into the split','2018-03','2018-03',736754,736784,0,'edtf','report',40,'2018-07','2018-07',736876,736906,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(119,'ca450420-adcf-51ae-b4c4-1e4e3ac7a296','2026-11-02',9,'I2018-3',31,'support','socle bedded on a foam ring, not glued','2018-06','2018-06',736846,736875,0,'edtf','report',40,'2018-07','2018-07',736876,736906,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(120,'9b9acdb0-7011-5f9a-8201-035f402dd697','2026-11-02',10,'I1957-1',NULL,'join','bowl and stem came stuck','before 1958','../1957',-9000000,714779,0,'words','noted when bought',28,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,'Hands unknown.');
INSERT INTO intervention VALUES(121,'f8ad7bdd-1d62-5a59-b7b3-eb4ad21ef982','2026-11-02',10,'I1969-1',32,'take apart','acetone bath','1969-01','1969-01',718798,718828,0,'edtf','card',29,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(122,'b114a1b9-cf19-591a-9d51-bfb41a28557e','2026-11-02',10,'I1969-2',32,'join','epoxy resin, tape','1969-01','1969-01',718798,718828,0,'edtf','card',29,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(123,'11226039-8447-5280-9e05-1c252b6d882a','2026-11-02',10,'I1985-1',NULL,'join','stem stuck with instant glue','[1983..1987]','[1983..1987]',723911,725736,0,'edtf','white bloom round the join',34,'2024-05-16','2024-05-16',739022,739022,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(124,'c488ffba-6f98-55b5-9fcb-636ffaf7a35e','2026-11-02',10,'I1998-1',33,'take apart','dichloromethane vapour, fourteen days','1998-02-09/1998-02-23','1998-02-09/1998-02-23',729429,729443,0,'edtf','report',34,'1998-05','1998-05',729510,729540,0,'edtf',13,'The short join between the sherds was left.');
INSERT INTO intervention VALUES(125,'81029032-b4ff-584e-84ea-7cea5a5f4886','2026-11-02',10,'I1998-2',33,'join','water-clear epoxy run in','1998-03-04','1998-03-04',729452,729452,0,'edtf','report',34,'1998-05','1998-05',729510,729540,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(126,'c8b44c1a-b37c-5406-959f-3b9dfbf987fa','2026-11-02',10,'I1998-3',33,'fill','rim cast on the bench, set in acrylic','1998-04','1998-04',729480,729509,0,'edtf','report',34,'1998-05','1998-05',729510,729540,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(127,'0bb393bc-979a-58f8-802e-ab7a2ac9982b','2026-11-02',10,'I2026-1',34,'examine','joins under ultraviolet and microscope','2026-05-28','2026-05-28',739764,739764,0,'edtf','day sheet',43,'2026-05-28','2026-05-28',739764,739764,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(128,'57b3cc62-907a-5533-9d94-8086ce30d9b3','2026-11-02',11,'I1879-1',NULL,'join','leaded and puttied','1879','1879',685926,686290,0,'edtf','date in the border',1,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(129,'2659b4a2-cd84-516e-a09e-9e342126beee','2026-11-02',11,'I1879-2',NULL,'coat','painted and fired','1879','1879',685926,686290,0,'edtf','date in the border',1,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(130,'7135fd7f-8a5f-5d3b-800f-5183018a0521','2026-11-02',11,'I1893-1',35,'join','sky pane and ties replaced','1893-10','1893-10',691313,691343,0,'edtf','daybook',23,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(131,'118c3307-31ea-551f-b1ad-616174cedc10','2026-11-02',11,'I1893-2',35,'support','lead strap over the crack','1893-10','1893-10',691313,691343,0,'edtf','daybook',23,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(132,'fdfaa1c4-ba41-55ef-8934-763c8fac54b3','2026-11-02',11,'I1988-1',36,'take apart','strap unsoldered','1988-06','1988-06',725889,725918,0,'edtf','file',31,'1988','1988',725737,726102,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(133,'4582f2c9-4771-5a2b-a0c6-12a271824695','2026-11-02',11,'I1988-2',36,'join','crack edge-bonded in silicone','1988-06','1988-06',725889,725918,0,'edtf','file',31,'1988','1988',725737,726102,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(134,'f42c3b26-0c2b-5243-8e22-4cf35ac9a47c','2026-11-02',11,'I1988-3',36,'consolidate','loose paint laid in acrylic','July 1988','1988-07',725919,725949,0,'words','file',31,'1988','1988',725737,726102,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(135,'6fb980a3-6d04-5def-a747-b012281de716','2026-11-02',11,'I2023-1',NULL,'examine','rack check','2023-03-08','2023-03-08',738587,738587,0,'edtf','note',NULL,'2023-03-08','2023-03-08',738587,738587,0,'edtf',17,NULL);
INSERT INTO intervention VALUES(136,'812b8ff3-5ee4-5632-bb74-cd3178974438','2026-11-02',12,'I1905-1',NULL,'join','came in two, stuck','before 1905','../1904',-9000000,695421,0,'words','noted on arrival',23,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,'"Sum sort of stone cement." Hands unknown.');
INSERT INTO intervention VALUES(137,'a5c91319-9ca3-5845-a071-29bb6710cab1','2026-11-02',12,'I1802-1',NULL,'join','urn set on a leaded dowel','1802','1802',657802,658166,0,'edtf','style',1,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(138,'8ff19d3e-1c89-5af4-ab3e-f3e21701d359','2026-11-02',12,'I1906-1',37,'support','tablet set on slate in plaster and pitch','1906-03','1906-03',695846,695876,0,'edtf','daybook',23,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(139,'ba6c2ad1-3e44-5052-a1cc-b383e6e51d9a','2026-11-02',12,'I1973-1',38,'take apart','break opened by heat lamp','1973-09','1973-09',720502,720531,0,'edtf','card',29,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(140,'0952b66f-2588-5c7f-886c-edeb684ed346','2026-11-02',12,'I1973-2',38,'join','polyester and brass dowel','1973-09','1973-09',720502,720531,0,'edtf','card',29,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(141,'5635dc65-bcd4-5ceb-9ee7-4f52021e5903','2026-11-02',12,'I1985-1',39,'clean','citrate poultice on the rust','1985-04/1985-05','1985-04/1985-05',724732,724792,0,'edtf','file',31,'1985-06','1985-06',724793,724822,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(142,'d3787f46-d5ab-580f-8a8a-e30140c4b08d','2026-11-02',12,'I1985-2',39,'remove earlier work','black lettering cleaned of a later lining','1985-05','1985-05',724762,724792,0,'edtf','file',31,'1985-06','1985-06',724793,724822,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(143,'a019ab37-641e-51d7-aa3b-9d3f87fab806','2026-11-02',12,'I1985-3',39,'coat','wax','1985-06','1985-06',724793,724822,0,'edtf','file',31,'1985-06','1985-06',724793,724822,0,'edtf',12,NULL);
INSERT INTO intervention VALUES(144,'1aed08f3-3aac-52e2-b768-ef639ad7646e','2026-11-02',13,'I1838-1',NULL,'join','hung in its headstock','1838','1838',670951,671315,0,'edtf','date on the bell',1,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(145,'f02d9e6b-a67d-58a4-8914-519e4680a1de','2026-11-02',13,'I1938-1',40,'support','back bolt and clapper new, leather washer','1938-04','1938-04',707565,707594,0,'edtf','ledger',26,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(146,'8de12b88-1ba8-5e95-aa95-27cde5532593','2026-11-02',13,'I1938-2',40,'fill','crack run with soft solder','1938-04','1938-04',707565,707594,0,'edtf','ledger',26,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(147,'8b5e96b8-5c65-5426-9d4f-42a93e01e445','2026-11-02',13,'I1961-1',41,'clean','metal polish','1961','1961',715876,716240,0,'edtf','card',28,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(148,'fab27316-7d36-5dd7-9615-4932d146934a','2026-11-02',13,'I1961-2',41,'coat','lacquer','1961','1961',715876,716240,0,'edtf','card',28,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,'"Lacquered same day."');
INSERT INTO intervention VALUES(149,'426f4b04-6cb2-5932-a560-c477e10d715b','2026-11-02',13,'I1988-1',NULL,'coat','headstock oiled','after 1979','1980/..',722815,9000000,0,'words','darker than the negatives of 1979',41,'2024-05-17','2024-05-17',739023,739023,0,'edtf',18,'Undocumented.');
INSERT INTO intervention VALUES(150,'377c9a40-ff93-5304-851e-f4b5533fbfe4','2026-11-02',13,'I2021-1',42,'clean','pale green spots picked out under the microscope','2021-03','2021-03',737850,737880,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(151,'6486c6b6-7110-5961-bc4f-d896919cb368','2026-11-02',13,'I2021-2',42,'remove earlier work','lacquer off outside','2021-04','2021-04',737881,737910,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(152,'1eb27c19-ced8-54f3-a86f-2b745bc82b81','2026-11-02',13,'I2021-3',42,'coat','wax outside','2021-09','2021-09',738034,738063,0,'edtf','report',41,'2021-11','2021-11',738095,738124,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(153,'4cef3c76-0733-5c77-bb42-efed4f5fa31b','2026-11-02',13,'I2026-1',43,'examine','yearly look with a lamp','2026-06-09','2026-06-09',739776,739776,0,'edtf','day sheet',43,'2026-06-09','2026-06-09',739776,739776,0,'edtf',16,NULL);
INSERT INTO intervention VALUES(154,'a9d83226-bd16-5e1d-a96e-d237ce84c941','2026-11-02',2,'I1891-1',44,'join','shellac melted on warmed edges, three staples','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words','account',24,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(155,'4ed7ae77-863f-53c5-b08a-aaa771936077','2026-11-02',2,'I1891-2',44,'fill','rim made up in plaster','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words','account',24,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(156,'42ed2e45-cf4e-5e70-bf2e-311831939080','2026-11-02',2,'I1925-1',NULL,'integrate','joins painted over wide','1920s','192X',700900,704552,0,'words','style of the overpaint',33,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,'Undocumented, hands unknown.');
INSERT INTO intervention VALUES(157,'5b58e3e0-010c-5b38-81fa-649d71ec4d7b','2026-11-02',2,'I1936-1',45,'join','right handle in plaster, glued','1936','1936',706744,707109,0,'edtf','ledger',26,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(158,'ca1e296e-178f-5a95-acb4-cc1ba994115a','2026-11-02',2,'I1936-2',45,'integrate','handle and rim painted in oil','1936','1936',706744,707109,0,'edtf','ledger',26,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(159,'e8686dd8-c39a-5130-954c-1c8d6bb4d6da','2026-11-02',2,'I1952-1',46,'take apart','spirit on cotton, then warm oven','September 1952','1952-09',712832,712861,0,'words','card',28,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,'Staple drawn while he was at it.');
INSERT INTO intervention VALUES(160,'82dde49f-97af-542a-a501-f4833bf95428','2026-11-02',2,'I1952-2',46,'join','cellulose nitrate from the tube','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf','card',28,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,'"Heat & waterproof, 4 tubes."');
INSERT INTO intervention VALUES(161,'a9ab9090-a7ec-5d46-bc5b-59e48a4cbdef','2026-11-02',2,'I1978-1',47,'take apart','shoulder fell open, old shellac scraped','1978-02','1978-02',722116,722143,0,'edtf','card',30,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(162,'933b9354-674c-5354-8568-afea6cd57b1a','2026-11-02',2,'I1978-2',47,'join','poly(vinyl acetate) in acetone','1978-03','1978-03',722144,722174,0,'edtf','card',30,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(163,'95c02817-ae92-51c4-b268-e4db668c9722','2026-11-02',2,'I1978-3',47,'join','neck and rim stuck by a helper','1978-04','1978-04',722175,722204,0,'edtf','card',30,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,'"P.V.A. by the summer girl." Name not kept.');
INSERT INTO intervention VALUES(164,'dab6cb7e-063c-55e0-a5d0-4e26dc7d4c0a','2026-11-02',2,'I1978-4',47,'consolidate','powdering edge fed with soluble nylon','1978-03','1978-03',722144,722174,0,'edtf','card',30,'2024-05-10','2024-05-10',739016,739016,0,'edtf',18,NULL);
INSERT INTO intervention VALUES(165,'4fc8e9d8-3c24-5eec-ac89-e36654fc1fc8','2026-11-02',2,'I1996-1',48,'clean','overpaint swabbed off','1996-05/1996-07','1996-05/1996-07',728780,728871,0,'edtf','report',33,'1996-12','1996-12',728994,729024,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(166,'943ee6cd-76b2-510b-aec3-1b57ef8d1e19','2026-11-02',2,'I1996-2',48,'take apart','acetone vapour under a tent, joins 7 to 10','1996-08-05/1996-08-12','1996-08-05/1996-08-12',728876,728883,0,'edtf','report',33,'1996-12','1996-12',728994,729024,0,'edtf',13,'All four opened within a week.');
INSERT INTO intervention VALUES(167,'e344f5cd-1a82-5f3f-aed1-fc764412a215','2026-11-02',2,'I1996-3',48,'remove earlier work','edges swabbed in acetone','1996-08-13/1996-08-20','1996-08-13/1996-08-20',728884,728891,0,'edtf','report',33,'1996-12','1996-12',728994,729024,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(168,'23e1339d-bc4f-5410-a23b-3a6128b24217','2026-11-02',2,'I1996-4',48,'join','acrylic, edges primed a day before','1996-09-02/1996-09-06','1996-09-02/1996-09-06',728904,728908,0,'edtf','report',33,'1996-12','1996-12',728994,729024,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(169,'93bcd4de-79b7-51f0-bb4a-d33f5063c344','2026-11-02',2,'I1996-5',48,'fill','acrylic fill, toned','1996-11','1996-11',728964,728993,0,'edtf','report',33,'1996-12','1996-12',728994,729024,0,'edtf',13,NULL);
INSERT INTO intervention VALUES(170,'394b7dd5-276f-572c-a9e0-ed9702b69150','2026-11-02',2,'I2013-1',NULL,'examine','infrared survey of joins','2013-05-13','2013-05-13',735001,735001,0,'edtf','survey',37,'2013-05-17','2013-05-17',735005,735005,0,'edtf',15,NULL);
INSERT INTO intervention VALUES(171,'73888727-eee4-5638-99e2-dfd6f6e3587e','2026-11-02',2,'I2025-1',49,'examine','joins by touch and lamp','2025-04-08','2025-04-08',739349,739349,0,'edtf','survey',42,'2025-04-08','2025-04-08',739349,739349,0,'edtf',17,NULL);
CREATE TABLE material_alias (
	material_id INTEGER NOT NULL, 
	alias TEXT NOT NULL, 
	alias_folded TEXT NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_material_alias PRIMARY KEY (material_id, alias), 
	CONSTRAINT fk_material_alias_material_id FOREIGN KEY(material_id) REFERENCES material (id)
)
 STRICT

;
INSERT INTO material_alias VALUES(1,'limestone','limestone',0);
INSERT INTO material_alias VALUES(1,'freestone','freestone',1);
INSERT INTO material_alias VALUES(3,'alabaster','alabaster',0);
INSERT INTO material_alias VALUES(9,'tinplate','tinplate',0);
INSERT INTO material_alias VALUES(10,'iron','iron',0);
INSERT INTO material_alias VALUES(13,'stainless','stainless',0);
INSERT INTO material_alias VALUES(13,'stainless steel','stainless steel',1);
INSERT INTO material_alias VALUES(17,'stoneware','stoneware',0);
INSERT INTO material_alias VALUES(21,'linden','linden',0);
INSERT INTO material_alias VALUES(25,'flint glass','flint glass',0);
INSERT INTO material_alias VALUES(29,'trass mortar','trass mortar',0);
INSERT INTO material_alias VALUES(30,'tarras','tarras',0);
INSERT INTO material_alias VALUES(31,'lime putty','lime putty',0);
INSERT INTO material_alias VALUES(33,'sand','sand',0);
INSERT INTO material_alias VALUES(34,'Roman cement','roman cement',0);
INSERT INTO material_alias VALUES(34,'Parker''s cement','parker''s cement',1);
INSERT INTO material_alias VALUES(35,'Portland cement','portland cement',0);
INSERT INTO material_alias VALUES(35,'P.C.','p.c.',1);
INSERT INTO material_alias VALUES(36,'plaster of Paris','plaster of paris',0);
INSERT INTO material_alias VALUES(36,'dental plaster','dental plaster',1);
INSERT INTO material_alias VALUES(37,'hardened plaster','hardened plaster',0);
INSERT INTO material_alias VALUES(38,'brimstone','brimstone',0);
INSERT INTO material_alias VALUES(39,'run lead','run lead',0);
INSERT INTO material_alias VALUES(40,'plumber''s solder','plumber''s solder',0);
INSERT INTO material_alias VALUES(40,'solder','solder',1);
INSERT INTO material_alias VALUES(41,'fountain mastic','fountain mastic',0);
INSERT INTO material_alias VALUES(42,'red lead putty','red lead putty',0);
INSERT INTO material_alias VALUES(45,'glazier''s putty','glazier''s putty',0);
INSERT INTO material_alias VALUES(46,'pitch','pitch',0);
INSERT INTO material_alias VALUES(46,'tar','tar',1);
INSERT INTO material_alias VALUES(48,'gum lac','gum lac',0);
INSERT INTO material_alias VALUES(48,'lac','lac',1);
INSERT INTO material_alias VALUES(49,'rosin','rosin',0);
INSERT INTO material_alias VALUES(52,'mender''s wax','mender''s wax',0);
INSERT INTO material_alias VALUES(53,'hide glue','hide glue',0);
INSERT INTO material_alias VALUES(53,'Scotch glue','scotch glue',1);
INSERT INTO material_alias VALUES(54,'isinglass','isinglass',0);
INSERT INTO material_alias VALUES(58,'flour paste','flour paste',0);
INSERT INTO material_alias VALUES(58,'starch paste','starch paste',1);
INSERT INTO material_alias VALUES(61,'nitrocellulose','nitrocellulose',0);
INSERT INTO material_alias VALUES(61,'celluloid cement','celluloid cement',1);
INSERT INTO material_alias VALUES(63,'Paraloid B-72','paraloid b-72',0);
INSERT INTO material_alias VALUES(63,'B72','b72',1);
INSERT INTO material_alias VALUES(63,'Acryloid B-72','acryloid b-72',2);
INSERT INTO material_alias VALUES(64,'Paraloid B-44','paraloid b-44',0);
INSERT INTO material_alias VALUES(65,'Paraloid B-67','paraloid b-67',0);
INSERT INTO material_alias VALUES(69,'PVAC emulsion','pvac emulsion',0);
INSERT INTO material_alias VALUES(70,'PVB','pvb',0);
INSERT INTO material_alias VALUES(71,'PVAL','pval',0);
INSERT INTO material_alias VALUES(72,'soluble nylon','soluble nylon',0);
INSERT INTO material_alias VALUES(75,'epoxy','epoxy',0);
INSERT INTO material_alias VALUES(78,'polyester','polyester',0);
INSERT INTO material_alias VALUES(79,'stone stopping','stone stopping',0);
INSERT INTO material_alias VALUES(80,'instant glue','instant glue',0);
INSERT INTO material_alias VALUES(83,'silane','silane',0);
INSERT INTO material_alias VALUES(95,'stone dust','stone dust',0);
INSERT INTO material_alias VALUES(97,'whiting','whiting',0);
INSERT INTO material_alias VALUES(109,'calc sinter','calc sinter',0);
INSERT INTO material_alias VALUES(112,'verdigris','verdigris',0);
INSERT INTO material_alias VALUES(116,'efflorescence','efflorescence',0);
INSERT INTO material_alias VALUES(129,'sodium hydroxide','sodium hydroxide',0);
INSERT INTO material_alias VALUES(129,'lye','lye',1);
INSERT INTO material_alias VALUES(131,'muriatic acid','muriatic acid',0);
INSERT INTO material_alias VALUES(131,'spirits of salt','spirits of salt',1);
INSERT INTO material_alias VALUES(138,'spirit','spirit',0);
INSERT INTO material_alias VALUES(138,'I.M.S.','i.m.s.',1);
INSERT INTO material_alias VALUES(142,'paint stripper','paint stripper',0);
INSERT INTO material_alias VALUES(149,'corrosive sublimate','corrosive sublimate',0);
INSERT INTO material_alias VALUES(150,'paraffin oil','paraffin oil',0);
INSERT INTO material_alias VALUES(150,'kerosene','kerosene',1);
INSERT INTO material_alias VALUES(153,'hard solder','hard solder',0);
INSERT INTO material_alias VALUES(154,'grisaille','grisaille',0);
INSERT INTO material_alias VALUES(156,'plate powder','plate powder',0);
CREATE TABLE material_part (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	material_id INTEGER NOT NULL, 
	part_id INTEGER NOT NULL, 
	amount REAL, 
	unit TEXT, 
	note TEXT, 
	CONSTRAINT ck_material_part_not_part_of_itself CHECK (part_id <> material_id), 
	CONSTRAINT fk_material_part_material_id FOREIGN KEY(material_id) REFERENCES material (id), 
	CONSTRAINT fk_material_part_part_id FOREIGN KEY(part_id) REFERENCES material (id), 
	CONSTRAINT uq_material_part_material_id_part_id UNIQUE (material_id, part_id), 
	CONSTRAINT uq_material_part_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO material_part VALUES(1,'f304aad4-048b-50c7-98f1-9bc7cabf7cc2','2026-11-02',29,30,1.0,'part by volume','Haske''s articles of 1741');
INSERT INTO material_part VALUES(2,'1c6a8520-97bf-5459-b0b7-290e8b00ec61','2026-11-02',29,31,1.0,'part by volume',NULL);
INSERT INTO material_part VALUES(3,'9448ca30-aab3-5bcc-ba44-64e4d1afd0f7','2026-11-02',29,33,1.0,'part by volume',NULL);
INSERT INTO material_part VALUES(4,'e996c8a5-9fb6-57f1-baf8-16afce55937e','2026-11-02',32,31,1.0,'part by volume',NULL);
INSERT INTO material_part VALUES(5,'9fd8695f-9d84-5840-b580-f207dd5e0820','2026-11-02',32,33,3.0,'part by volume',NULL);
INSERT INTO material_part VALUES(6,'b2a7dd19-ece5-5008-a4ae-98bbbd49a9fe','2026-11-02',35,33,3.0,'part by volume','ledger of 1934: "three and one"');
INSERT INTO material_part VALUES(7,'b490e286-6a61-5d15-b8db-e23843805456','2026-11-02',41,43,NULL,NULL,'"boiled"');
INSERT INTO material_part VALUES(8,'3b800cd2-6ea1-5368-ab50-8b46fd68df6c','2026-11-02',41,99,NULL,NULL,NULL);
INSERT INTO material_part VALUES(9,'2fdc0944-540f-57ed-90cc-3907ce4c7cdb','2026-11-02',41,98,NULL,NULL,NULL);
INSERT INTO material_part VALUES(10,'321c2986-9986-5752-8251-468dfe569435','2026-11-02',42,100,NULL,NULL,NULL);
INSERT INTO material_part VALUES(11,'50cb1577-2ef7-54cb-be16-8d0983f7cf38','2026-11-02',42,43,NULL,NULL,NULL);
INSERT INTO material_part VALUES(12,'e7764cc4-6fed-5425-82c0-60c2b2185620','2026-11-02',45,97,NULL,NULL,NULL);
INSERT INTO material_part VALUES(13,'3a384077-c5ed-57ee-b93a-039fc2adf3f0','2026-11-02',45,43,NULL,NULL,NULL);
INSERT INTO material_part VALUES(14,'dc4b86be-9df6-52d6-b3ab-c49ec85a012b','2026-11-02',52,49,3.0,'part by weight',NULL);
INSERT INTO material_part VALUES(15,'4a786fb9-c5b4-5729-b0d0-0d65ff57ef05','2026-11-02',52,84,1.0,'part by weight',NULL);
INSERT INTO material_part VALUES(16,'f75e20ba-2151-5034-9a33-2937947abda4','2026-11-02',79,78,NULL,NULL,NULL);
INSERT INTO material_part VALUES(17,'a939e4da-e1e7-5bc5-9dd4-b6c614694a6e','2026-11-02',79,96,NULL,NULL,NULL);
INSERT INTO material_part VALUES(18,'222c31d6-d194-5b2a-81d9-81daa500ca51','2026-11-02',77,75,100.0,'part by weight',NULL);
INSERT INTO material_part VALUES(19,'1a6261ad-dad2-501f-a6ac-65b94d790ee1','2026-11-02',77,101,4.0,'part by weight',NULL);
INSERT INTO material_part VALUES(20,'f3adbe0f-9108-55a8-b389-4e986551417a','2026-11-02',89,63,1.0,'part by weight',NULL);
INSERT INTO material_part VALUES(21,'2aeab647-4a61-553e-b4a8-164fe6967c8c','2026-11-02',89,95,6.0,'part by weight','sieved below 0.2 mm');
INSERT INTO material_part VALUES(22,'8021a650-ebf6-5c69-b0a3-616d20d9c013','2026-11-02',90,67,NULL,NULL,NULL);
INSERT INTO material_part VALUES(23,'6c003f63-868d-5db3-9153-2e44c10733cf','2026-11-02',90,102,NULL,NULL,NULL);
INSERT INTO material_part VALUES(24,'535addc6-8a44-55fc-839c-e3134a95e056','2026-11-02',87,84,1.0,'part by weight',NULL);
INSERT INTO material_part VALUES(25,'bbd7a25a-901a-50be-91b9-29d8fe740b37','2026-11-02',87,145,3.0,'part by weight',NULL);
INSERT INTO material_part VALUES(26,'71cceb9f-cb56-5d07-84c5-f291ecf3fe6a','2026-11-02',37,36,NULL,NULL,NULL);
INSERT INTO material_part VALUES(27,'784b09d8-3bc7-59cb-9997-6d5517bdb145','2026-11-02',37,53,NULL,NULL,NULL);
CREATE TABLE agent (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	intervention_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	material_id INTEGER, 
	material_class_id INTEGER, 
	material_words TEXT, 
	concentration TEXT, 
	form TEXT, 
	temperature_c REAL, 
	dwell_min REAL, 
	cleared TEXT, 
	cleared_how TEXT, 
	note TEXT, 
	CONSTRAINT ck_agent_form_known CHECK (form IN ('free', 'swab', 'gel', 'poultice', 'vapour', 'bath')), 
	CONSTRAINT fk_agent_material_class_id FOREIGN KEY(material_class_id) REFERENCES material_class (id), 
	CONSTRAINT fk_agent_material_id FOREIGN KEY(material_id) REFERENCES material (id), 
	CONSTRAINT fk_agent_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id), 
	CONSTRAINT fk_agent_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT uq_agent_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_agent_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_agent_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO agent VALUES(1,'ebb27d13-366a-5500-a9ec-45acfe4c1d24','2026-11-02',1,11,'G1',129,NULL,NULL,'about 10 %','swab',NULL,NULL,NULL,'hosed, no reading','"Hosed till it ran clean" is all the ledger has.');
INSERT INTO agent VALUES(2,'7597c2c6-0fbb-5963-923c-03eda8314957','2026-11-02',1,12,'G2',131,NULL,NULL,'"one in six"','free',NULL,NULL,NULL,'no word of it',NULL);
INSERT INTO agent VALUES(3,'6ee490c8-06ab-5265-96ab-12ec3364bb1d','2026-11-02',1,27,'G3',135,NULL,NULL,'5 %, pH 8','poultice',18.0,240.0,'yes','three packs of deionised water',NULL);
INSERT INTO agent VALUES(4,'78866287-731f-51eb-b6b7-6f9e71e7e15a','2026-11-02',1,28,'G4',125,NULL,NULL,NULL,'poultice',18.0,2880.0,'yes','dried off',NULL);
INSERT INTO agent VALUES(5,'65eb327e-4515-5ec9-b1aa-3f6f6da192cb','2026-11-02',1,31,'G5',142,NULL,NULL,'gel stripper','gel',20.0,60.0,NULL,NULL,'For an oily line on the bed; one place only.');
INSERT INTO agent VALUES(6,'d4db3e58-a068-53a1-872c-f2cc51f6ea5c','2026-11-02',1,38,'G6',124,NULL,NULL,NULL,'free',15.0,10.0,'yes','dried with fans','To quiet the dust of the saw.');
INSERT INTO agent VALUES(7,'e0919727-dc53-56f5-8e9e-b0e9c67e474f','2026-11-02',1,40,'G7',137,NULL,NULL,'undiluted','poultice',19.0,1440.0,'yes','evaporated, 21 days','Fed at the edge nine days, renewed daily.');
INSERT INTO agent VALUES(8,'5086d18c-1bfb-52bf-8c9c-c6063587445e','2026-11-02',1,41,'G8',137,NULL,NULL,'undiluted','poultice',19.0,1440.0,'yes','evaporated, 21 days','Six days.');
INSERT INTO agent VALUES(9,'d221be5c-2046-5326-a4b3-ab1f0ca5c311','2026-11-02',1,41,'G9',128,NULL,NULL,NULL,'free',85.0,25.0,'yes','cooled','Probe at the edge 85 degrees, inside not known.');
INSERT INTO agent VALUES(10,'cb5c3d30-8564-577e-8cd8-2817966233c4','2026-11-02',1,42,'G10',137,NULL,NULL,'undiluted','swab',20.0,5.0,'yes','evaporated',NULL);
INSERT INTO agent VALUES(11,'78cd1668-5ef6-5bfe-a903-0c6c552234a5','2026-11-02',1,46,'G11',140,NULL,NULL,'undiluted','gel',20.0,15.0,'yes','white spirit, dry swab','Lacquer softened at once.');
INSERT INTO agent VALUES(12,'b974ec18-8398-52cb-bc77-ffc8cbbc5037','2026-11-02',1,46,'G12',142,NULL,NULL,'gel stripper','gel',20.0,20.0,'yes','white spirit, dry swab','Black paint.');
INSERT INTO agent VALUES(13,'253823ba-99e9-5ddd-a3d8-13dff1b82805','2026-11-02',1,46,'G13',127,NULL,NULL,NULL,'vapour',98.0,1.0,'yes','dried','A trial on the South mask, stopped: the patina bloomed.');
INSERT INTO agent VALUES(14,'a4fc4298-9717-5244-9136-c12b774f926e','2026-11-02',3,57,'G1',141,NULL,NULL,'undiluted','swab',20.0,2.0,'yes','evaporated','For the wax.');
INSERT INTO agent VALUES(15,'27e97b6e-e785-5970-9034-a78793e1fcdb','2026-11-02',3,57,'G2',137,NULL,NULL,'undiluted','swab',20.0,1.0,'yes','evaporated','For the overpaint.');
INSERT INTO agent VALUES(16,'d45b6b1c-493e-5f71-822e-9555b890d059','2026-11-02',4,62,'G1',124,NULL,NULL,'hot','bath',70.0,60.0,NULL,'"left to dry"',NULL);
INSERT INTO agent VALUES(17,'7634d7f8-381b-5331-8404-97d1f52e7c45','2026-11-02',4,65,'G2',142,NULL,NULL,'undiluted','vapour',20.0,5760.0,'yes','aired a week',NULL);
INSERT INTO agent VALUES(18,'42e29245-125a-5d59-8595-8e949d6b677d','2026-11-02',5,72,'G1',150,NULL,NULL,NULL,'free',NULL,NULL,NULL,'no word of it',NULL);
INSERT INTO agent VALUES(19,'ef19e20a-04c4-5071-b373-578b13df8299','2026-11-02',5,76,'G2',151,NULL,NULL,NULL,'vapour',NULL,NULL,NULL,NULL,'Told only.');
INSERT INTO agent VALUES(20,'20edf4f6-b1ef-531d-ad82-6c96a328af59','2026-11-02',5,78,'G3',125,NULL,NULL,NULL,'swab',19.0,1.0,'yes','dried at once',NULL);
INSERT INTO agent VALUES(21,'38b3cf4e-2b50-52ab-ad63-57c9eee92a2c','2026-11-02',6,88,'G1',143,NULL,NULL,'undiluted','gel',20.0,10.0,'yes','white spirit, dry swab',NULL);
INSERT INTO agent VALUES(22,'abfad0d0-8087-5ef8-a0a0-f00392f5782b','2026-11-02',7,93,'G1',157,NULL,NULL,NULL,'bath',NULL,NULL,NULL,'"rinsed"',NULL);
INSERT INTO agent VALUES(23,'c5bf21e8-6d0c-5b16-9e82-c3f29036b5c8','2026-11-02',7,96,'G2',137,NULL,NULL,'undiluted','bath',20.0,30.0,'yes','fresh acetone twice',NULL);
INSERT INTO agent VALUES(24,'05b62563-53b5-58f5-a427-fab9b5022152','2026-11-02',7,98,'G3',156,NULL,NULL,'slurry','swab',20.0,3.0,'yes','deionised water, ethanol',NULL);
INSERT INTO agent VALUES(25,'9df9377b-93cf-5894-8048-170a59926e49','2026-11-02',8,106,'G1',141,NULL,NULL,'undiluted','swab',20.0,5.0,'yes','evaporated',NULL);
INSERT INTO agent VALUES(26,'52d9f5a1-b8c3-54ed-a707-af8b33c43729','2026-11-02',9,115,'G1',127,NULL,NULL,NULL,'vapour',100.0,NULL,'no',NULL,'"The plaster drank."');
INSERT INTO agent VALUES(27,'fb6c0ef2-2978-544f-8f53-38d8a9abfbcf','2026-11-02',10,121,'G1',137,NULL,NULL,'undiluted','bath',NULL,1440.0,'yes','evaporated',NULL);
INSERT INTO agent VALUES(28,'fa6b74c4-3954-561a-8e3c-93a32d293254','2026-11-02',10,124,'G2',142,NULL,NULL,'undiluted','vapour',20.0,20160.0,'yes','aired nine days',NULL);
INSERT INTO agent VALUES(29,'ce3b12a2-43d0-520e-899e-766051920645','2026-11-02',12,141,'G1',136,NULL,NULL,'5 %','poultice',18.0,240.0,NULL,'two wet packs, no reading',NULL);
INSERT INTO agent VALUES(30,'6ea9126c-8ccb-55a2-8d97-36019e8e7c8f','2026-11-02',13,147,'G1',130,NULL,NULL,'in the polish','swab',NULL,NULL,NULL,'no word of it',NULL);
INSERT INTO agent VALUES(31,'13de07ad-58b8-53d0-836b-69ca2c1243ae','2026-11-02',13,151,'G2',137,NULL,NULL,'undiluted','gel',20.0,5.0,'yes','acetone swab',NULL);
INSERT INTO agent VALUES(32,'92202e37-acab-574a-b106-c365ca8f9e06','2026-11-02',2,159,'G1',138,NULL,NULL,NULL,'swab',60.0,NULL,NULL,'"baked dry"','The oven fixed what the spirit left.');
INSERT INTO agent VALUES(33,'4a6d64ea-2be4-517c-a583-ab6aa748b2ab','2026-11-02',2,165,'G2',142,NULL,NULL,'gel stripper','gel',20.0,5.0,'yes','white spirit, dry swab',NULL);
INSERT INTO agent VALUES(34,'f308deb7-1a51-54b1-b97c-6e19dcbe3dcd','2026-11-02',2,166,'G3',137,NULL,NULL,'undiluted','vapour',20.0,10080.0,'yes','aired a week',NULL);
INSERT INTO agent VALUES(35,'3a0f2833-fc14-54d1-820c-d61ee9fc0883','2026-11-02',2,167,'G4',137,NULL,NULL,'undiluted','swab',20.0,2.0,'yes','evaporated',NULL);
CREATE TABLE intervention_aim (
	intervention_id INTEGER NOT NULL, 
	aim TEXT NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_intervention_aim PRIMARY KEY (intervention_id, aim), 
	CONSTRAINT ck_intervention_aim_aim_known CHECK (aim IN ('preventive', 'remedial', 'restoration')), 
	CONSTRAINT fk_intervention_aim_intervention_id FOREIGN KEY(intervention_id) REFERENCES intervention (id)
)
 STRICT

;
INSERT INTO intervention_aim VALUES(6,'restoration',0);
INSERT INTO intervention_aim VALUES(7,'restoration',0);
INSERT INTO intervention_aim VALUES(8,'restoration',0);
INSERT INTO intervention_aim VALUES(9,'restoration',0);
INSERT INTO intervention_aim VALUES(10,'preventive',0);
INSERT INTO intervention_aim VALUES(11,'restoration',0);
INSERT INTO intervention_aim VALUES(12,'restoration',0);
INSERT INTO intervention_aim VALUES(13,'remedial',0);
INSERT INTO intervention_aim VALUES(14,'remedial',0);
INSERT INTO intervention_aim VALUES(14,'restoration',1);
INSERT INTO intervention_aim VALUES(15,'restoration',0);
INSERT INTO intervention_aim VALUES(16,'restoration',0);
INSERT INTO intervention_aim VALUES(17,'preventive',0);
INSERT INTO intervention_aim VALUES(18,'restoration',0);
INSERT INTO intervention_aim VALUES(19,'preventive',0);
INSERT INTO intervention_aim VALUES(20,'restoration',0);
INSERT INTO intervention_aim VALUES(21,'preventive',0);
INSERT INTO intervention_aim VALUES(22,'remedial',0);
INSERT INTO intervention_aim VALUES(23,'remedial',0);
INSERT INTO intervention_aim VALUES(23,'restoration',1);
INSERT INTO intervention_aim VALUES(24,'restoration',0);
INSERT INTO intervention_aim VALUES(25,'restoration',0);
INSERT INTO intervention_aim VALUES(26,'remedial',0);
INSERT INTO intervention_aim VALUES(27,'restoration',0);
INSERT INTO intervention_aim VALUES(28,'remedial',0);
INSERT INTO intervention_aim VALUES(29,'preventive',0);
INSERT INTO intervention_aim VALUES(30,'remedial',0);
INSERT INTO intervention_aim VALUES(31,'remedial',0);
INSERT INTO intervention_aim VALUES(32,'preventive',0);
INSERT INTO intervention_aim VALUES(33,'remedial',0);
INSERT INTO intervention_aim VALUES(34,'remedial',0);
INSERT INTO intervention_aim VALUES(35,'restoration',0);
INSERT INTO intervention_aim VALUES(36,'preventive',0);
INSERT INTO intervention_aim VALUES(37,'preventive',0);
INSERT INTO intervention_aim VALUES(38,'preventive',0);
INSERT INTO intervention_aim VALUES(39,'preventive',0);
INSERT INTO intervention_aim VALUES(40,'remedial',0);
INSERT INTO intervention_aim VALUES(41,'remedial',0);
INSERT INTO intervention_aim VALUES(42,'remedial',0);
INSERT INTO intervention_aim VALUES(43,'preventive',0);
INSERT INTO intervention_aim VALUES(44,'remedial',0);
INSERT INTO intervention_aim VALUES(45,'restoration',0);
INSERT INTO intervention_aim VALUES(46,'restoration',0);
INSERT INTO intervention_aim VALUES(47,'preventive',0);
INSERT INTO intervention_aim VALUES(48,'remedial',0);
INSERT INTO intervention_aim VALUES(49,'preventive',0);
INSERT INTO intervention_aim VALUES(50,'preventive',0);
INSERT INTO intervention_aim VALUES(51,'preventive',0);
INSERT INTO intervention_aim VALUES(52,'restoration',0);
INSERT INTO intervention_aim VALUES(53,'restoration',0);
INSERT INTO intervention_aim VALUES(54,'restoration',0);
INSERT INTO intervention_aim VALUES(56,'restoration',0);
INSERT INTO intervention_aim VALUES(57,'restoration',0);
INSERT INTO intervention_aim VALUES(58,'restoration',0);
INSERT INTO intervention_aim VALUES(59,'restoration',0);
INSERT INTO intervention_aim VALUES(60,'preventive',0);
INSERT INTO intervention_aim VALUES(62,'remedial',0);
INSERT INTO intervention_aim VALUES(63,'restoration',0);
INSERT INTO intervention_aim VALUES(65,'remedial',0);
INSERT INTO intervention_aim VALUES(66,'restoration',0);
INSERT INTO intervention_aim VALUES(67,'restoration',0);
INSERT INTO intervention_aim VALUES(69,'remedial',0);
INSERT INTO intervention_aim VALUES(70,'restoration',0);
INSERT INTO intervention_aim VALUES(71,'preventive',0);
INSERT INTO intervention_aim VALUES(72,'preventive',0);
INSERT INTO intervention_aim VALUES(74,'restoration',0);
INSERT INTO intervention_aim VALUES(75,'remedial',0);
INSERT INTO intervention_aim VALUES(76,'preventive',0);
INSERT INTO intervention_aim VALUES(77,'preventive',0);
INSERT INTO intervention_aim VALUES(78,'preventive',0);
INSERT INTO intervention_aim VALUES(82,'restoration',0);
INSERT INTO intervention_aim VALUES(83,'restoration',0);
INSERT INTO intervention_aim VALUES(84,'remedial',0);
INSERT INTO intervention_aim VALUES(86,'remedial',0);
INSERT INTO intervention_aim VALUES(87,'preventive',0);
INSERT INTO intervention_aim VALUES(88,'restoration',0);
INSERT INTO intervention_aim VALUES(89,'preventive',0);
INSERT INTO intervention_aim VALUES(90,'remedial',0);
INSERT INTO intervention_aim VALUES(92,'restoration',0);
INSERT INTO intervention_aim VALUES(93,'restoration',0);
INSERT INTO intervention_aim VALUES(94,'preventive',0);
INSERT INTO intervention_aim VALUES(96,'remedial',0);
INSERT INTO intervention_aim VALUES(97,'preventive',0);
INSERT INTO intervention_aim VALUES(98,'restoration',0);
INSERT INTO intervention_aim VALUES(99,'preventive',0);
INSERT INTO intervention_aim VALUES(100,'preventive',0);
INSERT INTO intervention_aim VALUES(103,'restoration',0);
INSERT INTO intervention_aim VALUES(104,'restoration',0);
INSERT INTO intervention_aim VALUES(105,'preventive',0);
INSERT INTO intervention_aim VALUES(106,'remedial',0);
INSERT INTO intervention_aim VALUES(107,'preventive',0);
INSERT INTO intervention_aim VALUES(108,'preventive',0);
INSERT INTO intervention_aim VALUES(109,'preventive',0);
INSERT INTO intervention_aim VALUES(112,'restoration',0);
INSERT INTO intervention_aim VALUES(113,'restoration',0);
INSERT INTO intervention_aim VALUES(115,'restoration',0);
INSERT INTO intervention_aim VALUES(116,'restoration',0);
INSERT INTO intervention_aim VALUES(117,'preventive',0);
INSERT INTO intervention_aim VALUES(118,'remedial',0);
INSERT INTO intervention_aim VALUES(119,'preventive',0);
INSERT INTO intervention_aim VALUES(121,'remedial',0);
INSERT INTO intervention_aim VALUES(122,'restoration',0);
INSERT INTO intervention_aim VALUES(124,'remedial',0);
INSERT INTO intervention_aim VALUES(125,'restoration',0);
INSERT INTO intervention_aim VALUES(126,'restoration',0);
INSERT INTO intervention_aim VALUES(127,'preventive',0);
INSERT INTO intervention_aim VALUES(130,'restoration',0);
INSERT INTO intervention_aim VALUES(131,'remedial',0);
INSERT INTO intervention_aim VALUES(132,'restoration',0);
INSERT INTO intervention_aim VALUES(133,'restoration',0);
INSERT INTO intervention_aim VALUES(134,'remedial',0);
INSERT INTO intervention_aim VALUES(135,'preventive',0);
INSERT INTO intervention_aim VALUES(138,'remedial',0);
INSERT INTO intervention_aim VALUES(139,'remedial',0);
INSERT INTO intervention_aim VALUES(140,'restoration',0);
INSERT INTO intervention_aim VALUES(141,'restoration',0);
INSERT INTO intervention_aim VALUES(142,'restoration',0);
INSERT INTO intervention_aim VALUES(143,'preventive',0);
INSERT INTO intervention_aim VALUES(145,'remedial',0);
INSERT INTO intervention_aim VALUES(146,'restoration',0);
INSERT INTO intervention_aim VALUES(147,'restoration',0);
INSERT INTO intervention_aim VALUES(148,'preventive',0);
INSERT INTO intervention_aim VALUES(150,'remedial',0);
INSERT INTO intervention_aim VALUES(151,'restoration',0);
INSERT INTO intervention_aim VALUES(152,'preventive',0);
INSERT INTO intervention_aim VALUES(153,'preventive',0);
INSERT INTO intervention_aim VALUES(154,'restoration',0);
INSERT INTO intervention_aim VALUES(155,'restoration',0);
INSERT INTO intervention_aim VALUES(156,'restoration',0);
INSERT INTO intervention_aim VALUES(157,'restoration',0);
INSERT INTO intervention_aim VALUES(158,'restoration',0);
INSERT INTO intervention_aim VALUES(159,'remedial',0);
INSERT INTO intervention_aim VALUES(160,'restoration',0);
INSERT INTO intervention_aim VALUES(161,'remedial',0);
INSERT INTO intervention_aim VALUES(162,'restoration',0);
INSERT INTO intervention_aim VALUES(163,'restoration',0);
INSERT INTO intervention_aim VALUES(164,'remedial',0);
INSERT INTO intervention_aim VALUES(165,'restoration',0);
INSERT INTO intervention_aim VALUES(166,'remedial',0);
INSERT INTO intervention_aim VALUES(167,'remedial',0);
INSERT INTO intervention_aim VALUES(168,'restoration',0);
INSERT INTO intervention_aim VALUES(169,'restoration',0);
INSERT INTO intervention_aim VALUES(170,'preventive',0);
INSERT INTO intervention_aim VALUES(171,'preventive',0);
CREATE TABLE intervention_component (
	object_id INTEGER NOT NULL, 
	intervention_id INTEGER NOT NULL, 
	component_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_intervention_component PRIMARY KEY (intervention_id, component_id), 
	CONSTRAINT fk_intervention_component_object_id_component_id FOREIGN KEY(object_id, component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_intervention_component_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id)
)
 STRICT

;
INSERT INTO intervention_component VALUES(1,1,1,0);
INSERT INTO intervention_component VALUES(1,1,2,1);
INSERT INTO intervention_component VALUES(1,1,3,2);
INSERT INTO intervention_component VALUES(1,1,4,3);
INSERT INTO intervention_component VALUES(1,1,5,4);
INSERT INTO intervention_component VALUES(1,1,6,5);
INSERT INTO intervention_component VALUES(1,1,7,6);
INSERT INTO intervention_component VALUES(1,1,8,7);
INSERT INTO intervention_component VALUES(1,1,9,8);
INSERT INTO intervention_component VALUES(1,1,10,9);
INSERT INTO intervention_component VALUES(1,1,11,10);
INSERT INTO intervention_component VALUES(1,1,12,11);
INSERT INTO intervention_component VALUES(1,1,15,12);
INSERT INTO intervention_component VALUES(1,1,17,13);
INSERT INTO intervention_component VALUES(1,1,26,14);
INSERT INTO intervention_component VALUES(1,1,27,15);
INSERT INTO intervention_component VALUES(1,1,28,16);
INSERT INTO intervention_component VALUES(1,2,3,0);
INSERT INTO intervention_component VALUES(1,2,4,1);
INSERT INTO intervention_component VALUES(1,2,19,2);
INSERT INTO intervention_component VALUES(1,2,20,3);
INSERT INTO intervention_component VALUES(1,2,22,4);
INSERT INTO intervention_component VALUES(1,2,23,5);
INSERT INTO intervention_component VALUES(1,3,19,0);
INSERT INTO intervention_component VALUES(1,3,22,1);
INSERT INTO intervention_component VALUES(1,3,24,2);
INSERT INTO intervention_component VALUES(1,3,25,3);
INSERT INTO intervention_component VALUES(1,4,19,0);
INSERT INTO intervention_component VALUES(1,4,20,1);
INSERT INTO intervention_component VALUES(1,4,22,2);
INSERT INTO intervention_component VALUES(1,4,15,3);
INSERT INTO intervention_component VALUES(1,5,1,0);
INSERT INTO intervention_component VALUES(1,5,2,1);
INSERT INTO intervention_component VALUES(1,5,3,2);
INSERT INTO intervention_component VALUES(1,5,4,3);
INSERT INTO intervention_component VALUES(1,5,5,4);
INSERT INTO intervention_component VALUES(1,5,7,5);
INSERT INTO intervention_component VALUES(1,5,8,6);
INSERT INTO intervention_component VALUES(1,5,9,7);
INSERT INTO intervention_component VALUES(1,5,10,8);
INSERT INTO intervention_component VALUES(1,5,11,9);
INSERT INTO intervention_component VALUES(1,5,15,10);
INSERT INTO intervention_component VALUES(1,6,1,0);
INSERT INTO intervention_component VALUES(1,6,2,1);
INSERT INTO intervention_component VALUES(1,6,3,2);
INSERT INTO intervention_component VALUES(1,6,4,3);
INSERT INTO intervention_component VALUES(1,6,5,4);
INSERT INTO intervention_component VALUES(1,6,7,5);
INSERT INTO intervention_component VALUES(1,6,8,6);
INSERT INTO intervention_component VALUES(1,6,9,7);
INSERT INTO intervention_component VALUES(1,6,10,8);
INSERT INTO intervention_component VALUES(1,6,11,9);
INSERT INTO intervention_component VALUES(1,6,15,10);
INSERT INTO intervention_component VALUES(1,6,18,11);
INSERT INTO intervention_component VALUES(1,7,29,0);
INSERT INTO intervention_component VALUES(1,7,5,1);
INSERT INTO intervention_component VALUES(1,7,9,2);
INSERT INTO intervention_component VALUES(1,8,12,0);
INSERT INTO intervention_component VALUES(1,8,13,1);
INSERT INTO intervention_component VALUES(1,8,15,2);
INSERT INTO intervention_component VALUES(1,8,16,3);
INSERT INTO intervention_component VALUES(1,8,7,4);
INSERT INTO intervention_component VALUES(1,9,18,0);
INSERT INTO intervention_component VALUES(1,9,21,1);
INSERT INTO intervention_component VALUES(1,10,7,0);
INSERT INTO intervention_component VALUES(1,10,11,1);
INSERT INTO intervention_component VALUES(1,10,12,2);
INSERT INTO intervention_component VALUES(1,10,18,3);
INSERT INTO intervention_component VALUES(1,11,5,0);
INSERT INTO intervention_component VALUES(1,11,7,1);
INSERT INTO intervention_component VALUES(1,11,11,2);
INSERT INTO intervention_component VALUES(1,11,12,3);
INSERT INTO intervention_component VALUES(1,11,15,4);
INSERT INTO intervention_component VALUES(1,11,19,5);
INSERT INTO intervention_component VALUES(1,11,20,6);
INSERT INTO intervention_component VALUES(1,11,21,7);
INSERT INTO intervention_component VALUES(1,11,22,8);
INSERT INTO intervention_component VALUES(1,12,3,0);
INSERT INTO intervention_component VALUES(1,12,4,1);
INSERT INTO intervention_component VALUES(1,13,7,0);
INSERT INTO intervention_component VALUES(1,13,12,1);
INSERT INTO intervention_component VALUES(1,14,3,0);
INSERT INTO intervention_component VALUES(1,14,4,1);
INSERT INTO intervention_component VALUES(1,14,6,2);
INSERT INTO intervention_component VALUES(1,14,7,3);
INSERT INTO intervention_component VALUES(1,14,8,4);
INSERT INTO intervention_component VALUES(1,14,9,5);
INSERT INTO intervention_component VALUES(1,14,10,6);
INSERT INTO intervention_component VALUES(1,14,11,7);
INSERT INTO intervention_component VALUES(1,14,12,8);
INSERT INTO intervention_component VALUES(1,14,15,9);
INSERT INTO intervention_component VALUES(1,14,18,10);
INSERT INTO intervention_component VALUES(1,15,7,0);
INSERT INTO intervention_component VALUES(1,15,12,1);
INSERT INTO intervention_component VALUES(1,15,13,2);
INSERT INTO intervention_component VALUES(1,15,15,3);
INSERT INTO intervention_component VALUES(1,16,19,0);
INSERT INTO intervention_component VALUES(1,16,20,1);
INSERT INTO intervention_component VALUES(1,16,21,2);
INSERT INTO intervention_component VALUES(1,16,22,3);
INSERT INTO intervention_component VALUES(1,17,3,0);
INSERT INTO intervention_component VALUES(1,17,4,1);
INSERT INTO intervention_component VALUES(1,18,12,0);
INSERT INTO intervention_component VALUES(1,18,13,1);
INSERT INTO intervention_component VALUES(1,19,1,0);
INSERT INTO intervention_component VALUES(1,19,2,1);
INSERT INTO intervention_component VALUES(1,19,3,2);
INSERT INTO intervention_component VALUES(1,19,4,3);
INSERT INTO intervention_component VALUES(1,19,5,4);
INSERT INTO intervention_component VALUES(1,19,9,5);
INSERT INTO intervention_component VALUES(1,19,10,6);
INSERT INTO intervention_component VALUES(1,19,15,7);
INSERT INTO intervention_component VALUES(1,20,1,0);
INSERT INTO intervention_component VALUES(1,20,2,1);
INSERT INTO intervention_component VALUES(1,20,3,2);
INSERT INTO intervention_component VALUES(1,20,4,3);
INSERT INTO intervention_component VALUES(1,20,5,4);
INSERT INTO intervention_component VALUES(1,20,9,5);
INSERT INTO intervention_component VALUES(1,20,10,6);
INSERT INTO intervention_component VALUES(1,21,3,0);
INSERT INTO intervention_component VALUES(1,22,6,0);
INSERT INTO intervention_component VALUES(1,22,7,1);
INSERT INTO intervention_component VALUES(1,22,8,2);
INSERT INTO intervention_component VALUES(1,22,27,3);
INSERT INTO intervention_component VALUES(1,23,6,0);
INSERT INTO intervention_component VALUES(1,23,7,1);
INSERT INTO intervention_component VALUES(1,23,8,2);
INSERT INTO intervention_component VALUES(1,23,30,3);
INSERT INTO intervention_component VALUES(1,23,31,4);
INSERT INTO intervention_component VALUES(1,24,6,0);
INSERT INTO intervention_component VALUES(1,24,7,1);
INSERT INTO intervention_component VALUES(1,24,8,2);
INSERT INTO intervention_component VALUES(1,25,15,0);
INSERT INTO intervention_component VALUES(1,25,16,1);
INSERT INTO intervention_component VALUES(1,26,7,0);
INSERT INTO intervention_component VALUES(1,27,3,0);
INSERT INTO intervention_component VALUES(1,27,4,1);
INSERT INTO intervention_component VALUES(1,28,5,0);
INSERT INTO intervention_component VALUES(1,29,7,0);
INSERT INTO intervention_component VALUES(1,29,11,1);
INSERT INTO intervention_component VALUES(1,29,12,2);
INSERT INTO intervention_component VALUES(1,29,15,3);
INSERT INTO intervention_component VALUES(1,30,6,0);
INSERT INTO intervention_component VALUES(1,30,9,1);
INSERT INTO intervention_component VALUES(1,30,10,2);
INSERT INTO intervention_component VALUES(1,30,11,3);
INSERT INTO intervention_component VALUES(1,30,15,4);
INSERT INTO intervention_component VALUES(1,31,6,0);
INSERT INTO intervention_component VALUES(1,31,9,1);
INSERT INTO intervention_component VALUES(1,31,10,2);
INSERT INTO intervention_component VALUES(1,31,11,3);
INSERT INTO intervention_component VALUES(1,31,15,4);
INSERT INTO intervention_component VALUES(1,32,6,0);
INSERT INTO intervention_component VALUES(1,32,9,1);
INSERT INTO intervention_component VALUES(1,32,10,2);
INSERT INTO intervention_component VALUES(1,32,11,3);
INSERT INTO intervention_component VALUES(1,32,15,4);
INSERT INTO intervention_component VALUES(1,33,6,0);
INSERT INTO intervention_component VALUES(1,33,9,1);
INSERT INTO intervention_component VALUES(1,33,10,2);
INSERT INTO intervention_component VALUES(1,33,11,3);
INSERT INTO intervention_component VALUES(1,33,15,4);
INSERT INTO intervention_component VALUES(1,33,32,5);
INSERT INTO intervention_component VALUES(1,33,33,6);
INSERT INTO intervention_component VALUES(1,33,34,7);
INSERT INTO intervention_component VALUES(1,33,35,8);
INSERT INTO intervention_component VALUES(1,34,7,0);
INSERT INTO intervention_component VALUES(1,34,12,1);
INSERT INTO intervention_component VALUES(1,35,7,0);
INSERT INTO intervention_component VALUES(1,35,12,1);
INSERT INTO intervention_component VALUES(1,35,15,2);
INSERT INTO intervention_component VALUES(1,36,19,0);
INSERT INTO intervention_component VALUES(1,36,20,1);
INSERT INTO intervention_component VALUES(1,36,21,2);
INSERT INTO intervention_component VALUES(1,36,22,3);
INSERT INTO intervention_component VALUES(1,37,6,0);
INSERT INTO intervention_component VALUES(1,37,7,1);
INSERT INTO intervention_component VALUES(1,37,8,2);
INSERT INTO intervention_component VALUES(1,37,12,3);
INSERT INTO intervention_component VALUES(1,37,19,4);
INSERT INTO intervention_component VALUES(1,37,22,5);
INSERT INTO intervention_component VALUES(1,38,1,0);
INSERT INTO intervention_component VALUES(1,38,5,1);
INSERT INTO intervention_component VALUES(1,39,7,0);
INSERT INTO intervention_component VALUES(1,40,6,0);
INSERT INTO intervention_component VALUES(1,40,11,1);
INSERT INTO intervention_component VALUES(1,40,32,2);
INSERT INTO intervention_component VALUES(1,41,9,0);
INSERT INTO intervention_component VALUES(1,41,15,1);
INSERT INTO intervention_component VALUES(1,41,34,2);
INSERT INTO intervention_component VALUES(1,42,6,0);
INSERT INTO intervention_component VALUES(1,42,9,1);
INSERT INTO intervention_component VALUES(1,42,11,2);
INSERT INTO intervention_component VALUES(1,42,15,3);
INSERT INTO intervention_component VALUES(1,43,6,0);
INSERT INTO intervention_component VALUES(1,43,9,1);
INSERT INTO intervention_component VALUES(1,43,11,2);
INSERT INTO intervention_component VALUES(1,43,15,3);
INSERT INTO intervention_component VALUES(1,44,6,0);
INSERT INTO intervention_component VALUES(1,44,9,1);
INSERT INTO intervention_component VALUES(1,44,11,2);
INSERT INTO intervention_component VALUES(1,44,15,3);
INSERT INTO intervention_component VALUES(1,44,32,4);
INSERT INTO intervention_component VALUES(1,44,34,5);
INSERT INTO intervention_component VALUES(1,45,6,0);
INSERT INTO intervention_component VALUES(1,45,7,1);
INSERT INTO intervention_component VALUES(1,45,11,2);
INSERT INTO intervention_component VALUES(1,45,12,3);
INSERT INTO intervention_component VALUES(1,45,15,4);
INSERT INTO intervention_component VALUES(1,46,19,0);
INSERT INTO intervention_component VALUES(1,46,20,1);
INSERT INTO intervention_component VALUES(1,46,21,2);
INSERT INTO intervention_component VALUES(1,46,22,3);
INSERT INTO intervention_component VALUES(1,47,19,0);
INSERT INTO intervention_component VALUES(1,47,20,1);
INSERT INTO intervention_component VALUES(1,47,21,2);
INSERT INTO intervention_component VALUES(1,47,22,3);
INSERT INTO intervention_component VALUES(1,48,22,0);
INSERT INTO intervention_component VALUES(1,48,25,1);
INSERT INTO intervention_component VALUES(1,49,7,0);
INSERT INTO intervention_component VALUES(1,49,12,1);
INSERT INTO intervention_component VALUES(1,50,3,0);
INSERT INTO intervention_component VALUES(1,50,5,1);
INSERT INTO intervention_component VALUES(1,50,7,2);
INSERT INTO intervention_component VALUES(1,50,12,3);
INSERT INTO intervention_component VALUES(1,50,15,4);
INSERT INTO intervention_component VALUES(1,51,15,0);
INSERT INTO intervention_component VALUES(3,52,38,0);
INSERT INTO intervention_component VALUES(3,52,39,1);
INSERT INTO intervention_component VALUES(3,52,40,2);
INSERT INTO intervention_component VALUES(3,52,41,3);
INSERT INTO intervention_component VALUES(3,52,42,4);
INSERT INTO intervention_component VALUES(3,53,38,0);
INSERT INTO intervention_component VALUES(3,54,38,0);
INSERT INTO intervention_component VALUES(3,54,42,1);
INSERT INTO intervention_component VALUES(3,55,38,0);
INSERT INTO intervention_component VALUES(3,55,39,1);
INSERT INTO intervention_component VALUES(3,56,39,0);
INSERT INTO intervention_component VALUES(3,56,40,1);
INSERT INTO intervention_component VALUES(3,57,38,0);
INSERT INTO intervention_component VALUES(3,57,39,1);
INSERT INTO intervention_component VALUES(3,58,38,0);
INSERT INTO intervention_component VALUES(3,59,38,0);
INSERT INTO intervention_component VALUES(3,60,38,0);
INSERT INTO intervention_component VALUES(3,60,39,1);
INSERT INTO intervention_component VALUES(3,60,40,2);
INSERT INTO intervention_component VALUES(4,61,43,0);
INSERT INTO intervention_component VALUES(4,61,44,1);
INSERT INTO intervention_component VALUES(4,61,45,2);
INSERT INTO intervention_component VALUES(4,62,43,0);
INSERT INTO intervention_component VALUES(4,62,44,1);
INSERT INTO intervention_component VALUES(4,62,45,2);
INSERT INTO intervention_component VALUES(4,63,43,0);
INSERT INTO intervention_component VALUES(4,63,44,1);
INSERT INTO intervention_component VALUES(4,63,45,2);
INSERT INTO intervention_component VALUES(4,63,47,3);
INSERT INTO intervention_component VALUES(4,64,43,0);
INSERT INTO intervention_component VALUES(4,64,47,1);
INSERT INTO intervention_component VALUES(4,65,43,0);
INSERT INTO intervention_component VALUES(4,65,44,1);
INSERT INTO intervention_component VALUES(4,66,44,0);
INSERT INTO intervention_component VALUES(4,66,48,1);
INSERT INTO intervention_component VALUES(4,67,44,0);
INSERT INTO intervention_component VALUES(5,68,52,0);
INSERT INTO intervention_component VALUES(5,68,53,1);
INSERT INTO intervention_component VALUES(5,68,54,2);
INSERT INTO intervention_component VALUES(5,69,51,0);
INSERT INTO intervention_component VALUES(5,69,58,1);
INSERT INTO intervention_component VALUES(5,70,52,0);
INSERT INTO intervention_component VALUES(5,70,59,1);
INSERT INTO intervention_component VALUES(5,71,51,0);
INSERT INTO intervention_component VALUES(5,71,52,1);
INSERT INTO intervention_component VALUES(5,72,52,0);
INSERT INTO intervention_component VALUES(5,72,53,1);
INSERT INTO intervention_component VALUES(5,73,51,0);
INSERT INTO intervention_component VALUES(5,73,52,1);
INSERT INTO intervention_component VALUES(5,74,52,0);
INSERT INTO intervention_component VALUES(5,75,52,0);
INSERT INTO intervention_component VALUES(5,77,51,0);
INSERT INTO intervention_component VALUES(5,77,52,1);
INSERT INTO intervention_component VALUES(5,77,53,2);
INSERT INTO intervention_component VALUES(5,77,54,3);
INSERT INTO intervention_component VALUES(5,78,51,0);
INSERT INTO intervention_component VALUES(5,78,52,1);
INSERT INTO intervention_component VALUES(6,79,60,0);
INSERT INTO intervention_component VALUES(6,79,61,1);
INSERT INTO intervention_component VALUES(6,80,60,0);
INSERT INTO intervention_component VALUES(6,80,61,1);
INSERT INTO intervention_component VALUES(6,81,60,0);
INSERT INTO intervention_component VALUES(6,82,60,0);
INSERT INTO intervention_component VALUES(6,82,61,1);
INSERT INTO intervention_component VALUES(6,82,65,2);
INSERT INTO intervention_component VALUES(6,83,60,0);
INSERT INTO intervention_component VALUES(6,83,61,1);
INSERT INTO intervention_component VALUES(6,84,60,0);
INSERT INTO intervention_component VALUES(6,85,60,0);
INSERT INTO intervention_component VALUES(6,86,61,0);
INSERT INTO intervention_component VALUES(6,87,60,0);
INSERT INTO intervention_component VALUES(6,87,61,1);
INSERT INTO intervention_component VALUES(6,87,64,2);
INSERT INTO intervention_component VALUES(6,88,61,0);
INSERT INTO intervention_component VALUES(6,89,64,0);
INSERT INTO intervention_component VALUES(6,89,68,1);
INSERT INTO intervention_component VALUES(6,90,60,0);
INSERT INTO intervention_component VALUES(6,90,61,1);
INSERT INTO intervention_component VALUES(7,91,69,0);
INSERT INTO intervention_component VALUES(7,91,70,1);
INSERT INTO intervention_component VALUES(7,91,71,2);
INSERT INTO intervention_component VALUES(7,91,72,3);
INSERT INTO intervention_component VALUES(7,91,73,4);
INSERT INTO intervention_component VALUES(7,92,69,0);
INSERT INTO intervention_component VALUES(7,92,74,1);
INSERT INTO intervention_component VALUES(7,93,69,0);
INSERT INTO intervention_component VALUES(7,93,71,1);
INSERT INTO intervention_component VALUES(7,94,69,0);
INSERT INTO intervention_component VALUES(7,94,71,1);
INSERT INTO intervention_component VALUES(7,95,71,0);
INSERT INTO intervention_component VALUES(7,95,72,1);
INSERT INTO intervention_component VALUES(7,96,69,0);
INSERT INTO intervention_component VALUES(7,96,71,1);
INSERT INTO intervention_component VALUES(7,97,69,0);
INSERT INTO intervention_component VALUES(7,97,71,1);
INSERT INTO intervention_component VALUES(7,98,69,0);
INSERT INTO intervention_component VALUES(7,98,71,1);
INSERT INTO intervention_component VALUES(7,99,69,0);
INSERT INTO intervention_component VALUES(7,99,71,1);
INSERT INTO intervention_component VALUES(7,100,69,0);
INSERT INTO intervention_component VALUES(7,100,71,1);
INSERT INTO intervention_component VALUES(8,101,76,0);
INSERT INTO intervention_component VALUES(8,101,77,1);
INSERT INTO intervention_component VALUES(8,101,78,2);
INSERT INTO intervention_component VALUES(8,101,79,3);
INSERT INTO intervention_component VALUES(8,101,81,4);
INSERT INTO intervention_component VALUES(8,101,82,5);
INSERT INTO intervention_component VALUES(8,102,76,0);
INSERT INTO intervention_component VALUES(8,103,77,0);
INSERT INTO intervention_component VALUES(8,103,80,1);
INSERT INTO intervention_component VALUES(8,104,76,0);
INSERT INTO intervention_component VALUES(8,105,77,0);
INSERT INTO intervention_component VALUES(8,105,78,1);
INSERT INTO intervention_component VALUES(8,105,79,2);
INSERT INTO intervention_component VALUES(8,105,81,3);
INSERT INTO intervention_component VALUES(8,106,77,0);
INSERT INTO intervention_component VALUES(8,106,78,1);
INSERT INTO intervention_component VALUES(8,107,77,0);
INSERT INTO intervention_component VALUES(8,107,78,1);
INSERT INTO intervention_component VALUES(8,108,76,0);
INSERT INTO intervention_component VALUES(8,109,83,0);
INSERT INTO intervention_component VALUES(9,110,84,0);
INSERT INTO intervention_component VALUES(9,110,85,1);
INSERT INTO intervention_component VALUES(9,111,84,0);
INSERT INTO intervention_component VALUES(9,111,85,1);
INSERT INTO intervention_component VALUES(9,111,89,2);
INSERT INTO intervention_component VALUES(9,112,84,0);
INSERT INTO intervention_component VALUES(9,112,88,1);
INSERT INTO intervention_component VALUES(9,113,84,0);
INSERT INTO intervention_component VALUES(9,114,84,0);
INSERT INTO intervention_component VALUES(9,114,86,1);
INSERT INTO intervention_component VALUES(9,115,84,0);
INSERT INTO intervention_component VALUES(9,116,84,0);
INSERT INTO intervention_component VALUES(9,117,84,0);
INSERT INTO intervention_component VALUES(9,117,89,1);
INSERT INTO intervention_component VALUES(9,118,84,0);
INSERT INTO intervention_component VALUES(9,119,84,0);
INSERT INTO intervention_component VALUES(9,119,85,1);
INSERT INTO intervention_component VALUES(10,120,90,0);
INSERT INTO intervention_component VALUES(10,120,91,1);
INSERT INTO intervention_component VALUES(10,120,92,2);
INSERT INTO intervention_component VALUES(10,120,94,3);
INSERT INTO intervention_component VALUES(10,121,90,0);
INSERT INTO intervention_component VALUES(10,121,91,1);
INSERT INTO intervention_component VALUES(10,121,92,2);
INSERT INTO intervention_component VALUES(10,122,90,0);
INSERT INTO intervention_component VALUES(10,122,91,1);
INSERT INTO intervention_component VALUES(10,122,92,2);
INSERT INTO intervention_component VALUES(10,123,90,0);
INSERT INTO intervention_component VALUES(10,123,94,1);
INSERT INTO intervention_component VALUES(10,124,90,0);
INSERT INTO intervention_component VALUES(10,124,91,1);
INSERT INTO intervention_component VALUES(10,124,92,2);
INSERT INTO intervention_component VALUES(10,125,90,0);
INSERT INTO intervention_component VALUES(10,125,91,1);
INSERT INTO intervention_component VALUES(10,125,92,2);
INSERT INTO intervention_component VALUES(10,126,90,0);
INSERT INTO intervention_component VALUES(10,126,96,1);
INSERT INTO intervention_component VALUES(10,127,90,0);
INSERT INTO intervention_component VALUES(10,127,91,1);
INSERT INTO intervention_component VALUES(10,127,92,2);
INSERT INTO intervention_component VALUES(10,127,94,3);
INSERT INTO intervention_component VALUES(11,128,97,0);
INSERT INTO intervention_component VALUES(11,128,98,1);
INSERT INTO intervention_component VALUES(11,128,99,2);
INSERT INTO intervention_component VALUES(11,128,102,3);
INSERT INTO intervention_component VALUES(11,129,99,0);
INSERT INTO intervention_component VALUES(11,130,100,0);
INSERT INTO intervention_component VALUES(11,130,102,1);
INSERT INTO intervention_component VALUES(11,130,103,2);
INSERT INTO intervention_component VALUES(11,131,98,0);
INSERT INTO intervention_component VALUES(11,132,98,0);
INSERT INTO intervention_component VALUES(11,133,98,0);
INSERT INTO intervention_component VALUES(11,134,97,0);
INSERT INTO intervention_component VALUES(11,134,99,1);
INSERT INTO intervention_component VALUES(11,135,98,0);
INSERT INTO intervention_component VALUES(11,135,99,1);
INSERT INTO intervention_component VALUES(11,135,102,2);
INSERT INTO intervention_component VALUES(12,136,104,0);
INSERT INTO intervention_component VALUES(12,136,105,1);
INSERT INTO intervention_component VALUES(12,136,106,2);
INSERT INTO intervention_component VALUES(12,137,104,0);
INSERT INTO intervention_component VALUES(12,137,107,1);
INSERT INTO intervention_component VALUES(12,137,108,2);
INSERT INTO intervention_component VALUES(12,137,110,3);
INSERT INTO intervention_component VALUES(12,138,104,0);
INSERT INTO intervention_component VALUES(12,138,109,1);
INSERT INTO intervention_component VALUES(12,139,104,0);
INSERT INTO intervention_component VALUES(12,139,105,1);
INSERT INTO intervention_component VALUES(12,140,104,0);
INSERT INTO intervention_component VALUES(12,140,105,1);
INSERT INTO intervention_component VALUES(12,140,111,2);
INSERT INTO intervention_component VALUES(12,141,104,0);
INSERT INTO intervention_component VALUES(12,141,107,1);
INSERT INTO intervention_component VALUES(12,142,104,0);
INSERT INTO intervention_component VALUES(12,143,104,0);
INSERT INTO intervention_component VALUES(13,144,112,0);
INSERT INTO intervention_component VALUES(13,144,114,1);
INSERT INTO intervention_component VALUES(13,144,115,2);
INSERT INTO intervention_component VALUES(13,145,112,0);
INSERT INTO intervention_component VALUES(13,145,113,1);
INSERT INTO intervention_component VALUES(13,145,114,2);
INSERT INTO intervention_component VALUES(13,145,116,3);
INSERT INTO intervention_component VALUES(13,146,112,0);
INSERT INTO intervention_component VALUES(13,147,112,0);
INSERT INTO intervention_component VALUES(13,148,112,0);
INSERT INTO intervention_component VALUES(13,149,114,0);
INSERT INTO intervention_component VALUES(13,150,112,0);
INSERT INTO intervention_component VALUES(13,151,112,0);
INSERT INTO intervention_component VALUES(13,152,112,0);
INSERT INTO intervention_component VALUES(13,153,112,0);
INSERT INTO intervention_component VALUES(2,154,118,0);
INSERT INTO intervention_component VALUES(2,154,119,1);
INSERT INTO intervention_component VALUES(2,154,120,2);
INSERT INTO intervention_component VALUES(2,154,121,3);
INSERT INTO intervention_component VALUES(2,154,122,4);
INSERT INTO intervention_component VALUES(2,154,123,5);
INSERT INTO intervention_component VALUES(2,154,124,6);
INSERT INTO intervention_component VALUES(2,154,125,7);
INSERT INTO intervention_component VALUES(2,154,126,8);
INSERT INTO intervention_component VALUES(2,154,127,9);
INSERT INTO intervention_component VALUES(2,154,128,10);
INSERT INTO intervention_component VALUES(2,154,129,11);
INSERT INTO intervention_component VALUES(2,154,130,12);
INSERT INTO intervention_component VALUES(2,154,131,13);
INSERT INTO intervention_component VALUES(2,154,132,14);
INSERT INTO intervention_component VALUES(2,154,133,15);
INSERT INTO intervention_component VALUES(2,154,134,16);
INSERT INTO intervention_component VALUES(2,154,135,17);
INSERT INTO intervention_component VALUES(2,154,138,18);
INSERT INTO intervention_component VALUES(2,154,141,19);
INSERT INTO intervention_component VALUES(2,155,135,0);
INSERT INTO intervention_component VALUES(2,155,139,1);
INSERT INTO intervention_component VALUES(2,157,129,0);
INSERT INTO intervention_component VALUES(2,157,140,1);
INSERT INTO intervention_component VALUES(2,158,140,0);
INSERT INTO intervention_component VALUES(2,158,135,1);
INSERT INTO intervention_component VALUES(2,159,124,0);
INSERT INTO intervention_component VALUES(2,159,125,1);
INSERT INTO intervention_component VALUES(2,159,126,2);
INSERT INTO intervention_component VALUES(2,159,127,3);
INSERT INTO intervention_component VALUES(2,159,128,4);
INSERT INTO intervention_component VALUES(2,159,129,5);
INSERT INTO intervention_component VALUES(2,159,130,6);
INSERT INTO intervention_component VALUES(2,159,141,7);
INSERT INTO intervention_component VALUES(2,160,124,0);
INSERT INTO intervention_component VALUES(2,160,125,1);
INSERT INTO intervention_component VALUES(2,160,126,2);
INSERT INTO intervention_component VALUES(2,160,127,3);
INSERT INTO intervention_component VALUES(2,160,128,4);
INSERT INTO intervention_component VALUES(2,160,129,5);
INSERT INTO intervention_component VALUES(2,160,130,6);
INSERT INTO intervention_component VALUES(2,161,130,0);
INSERT INTO intervention_component VALUES(2,161,131,1);
INSERT INTO intervention_component VALUES(2,161,132,2);
INSERT INTO intervention_component VALUES(2,161,133,3);
INSERT INTO intervention_component VALUES(2,161,134,4);
INSERT INTO intervention_component VALUES(2,161,135,5);
INSERT INTO intervention_component VALUES(2,162,130,0);
INSERT INTO intervention_component VALUES(2,162,131,1);
INSERT INTO intervention_component VALUES(2,162,132,2);
INSERT INTO intervention_component VALUES(2,162,133,3);
INSERT INTO intervention_component VALUES(2,163,133,0);
INSERT INTO intervention_component VALUES(2,163,134,1);
INSERT INTO intervention_component VALUES(2,163,135,2);
INSERT INTO intervention_component VALUES(2,164,126,0);
INSERT INTO intervention_component VALUES(2,165,127,0);
INSERT INTO intervention_component VALUES(2,165,128,1);
INSERT INTO intervention_component VALUES(2,165,129,2);
INSERT INTO intervention_component VALUES(2,165,135,3);
INSERT INTO intervention_component VALUES(2,166,124,0);
INSERT INTO intervention_component VALUES(2,166,125,1);
INSERT INTO intervention_component VALUES(2,166,126,2);
INSERT INTO intervention_component VALUES(2,166,127,3);
INSERT INTO intervention_component VALUES(2,166,128,4);
INSERT INTO intervention_component VALUES(2,167,124,0);
INSERT INTO intervention_component VALUES(2,167,125,1);
INSERT INTO intervention_component VALUES(2,167,126,2);
INSERT INTO intervention_component VALUES(2,167,127,3);
INSERT INTO intervention_component VALUES(2,167,128,4);
INSERT INTO intervention_component VALUES(2,168,124,0);
INSERT INTO intervention_component VALUES(2,168,125,1);
INSERT INTO intervention_component VALUES(2,168,126,2);
INSERT INTO intervention_component VALUES(2,168,127,3);
INSERT INTO intervention_component VALUES(2,168,128,4);
INSERT INTO intervention_component VALUES(2,169,128,0);
INSERT INTO intervention_component VALUES(2,170,128,0);
INSERT INTO intervention_component VALUES(2,170,129,1);
INSERT INTO intervention_component VALUES(2,170,130,2);
INSERT INTO intervention_component VALUES(2,171,127,0);
INSERT INTO intervention_component VALUES(2,171,128,1);
INSERT INTO intervention_component VALUES(2,171,129,2);
INSERT INTO intervention_component VALUES(2,171,130,3);
INSERT INTO intervention_component VALUES(2,171,131,4);
INSERT INTO intervention_component VALUES(2,171,132,5);
INSERT INTO intervention_component VALUES(2,171,133,6);
INSERT INTO intervention_component VALUES(2,171,134,7);
INSERT INTO intervention_component VALUES(2,171,135,8);
CREATE TABLE intervention_person (
	intervention_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	role TEXT, 
	CONSTRAINT pk_intervention_person PRIMARY KEY (intervention_id, position), 
	CONSTRAINT fk_intervention_person_intervention_id FOREIGN KEY(intervention_id) REFERENCES intervention (id), 
	CONSTRAINT fk_intervention_person_person_id FOREIGN KEY(person_id) REFERENCES person (id)
)
 STRICT

;
INSERT INTO intervention_person VALUES(1,0,1,'sculptor');
INSERT INTO intervention_person VALUES(2,0,1,'sculptor');
INSERT INTO intervention_person VALUES(3,0,2,'founder');
INSERT INTO intervention_person VALUES(4,0,2,'founder');
INSERT INTO intervention_person VALUES(4,1,1,'sculptor');
INSERT INTO intervention_person VALUES(6,0,3,'mason');
INSERT INTO intervention_person VALUES(7,0,3,'mason');
INSERT INTO intervention_person VALUES(11,0,7,'mason');
INSERT INTO intervention_person VALUES(12,0,7,'mason');
INSERT INTO intervention_person VALUES(13,0,7,'mason');
INSERT INTO intervention_person VALUES(14,0,7,'mason');
INSERT INTO intervention_person VALUES(15,0,7,'mason');
INSERT INTO intervention_person VALUES(16,0,7,'mason');
INSERT INTO intervention_person VALUES(19,0,8,'attendant');
INSERT INTO intervention_person VALUES(19,1,9,'keeper');
INSERT INTO intervention_person VALUES(20,0,8,'attendant');
INSERT INTO intervention_person VALUES(21,0,8,'attendant');
INSERT INTO intervention_person VALUES(22,0,10,'technician');
INSERT INTO intervention_person VALUES(23,0,10,'technician');
INSERT INTO intervention_person VALUES(24,0,10,'technician');
INSERT INTO intervention_person VALUES(25,0,10,'technician');
INSERT INTO intervention_person VALUES(26,0,11,'conservator');
INSERT INTO intervention_person VALUES(27,0,11,'conservator');
INSERT INTO intervention_person VALUES(28,0,11,'conservator');
INSERT INTO intervention_person VALUES(29,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(30,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(31,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(32,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(33,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(34,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(35,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(36,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(37,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(37,1,14,'senior conservator');
INSERT INTO intervention_person VALUES(38,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(38,1,16,'conservator');
INSERT INTO intervention_person VALUES(39,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(40,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(40,1,16,'conservator');
INSERT INTO intervention_person VALUES(41,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(42,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(43,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(44,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(44,1,16,'conservator');
INSERT INTO intervention_person VALUES(45,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(46,0,16,'conservator');
INSERT INTO intervention_person VALUES(47,0,16,'conservator');
INSERT INTO intervention_person VALUES(48,0,16,'conservator');
INSERT INTO intervention_person VALUES(49,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(50,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(50,1,19,'intern');
INSERT INTO intervention_person VALUES(51,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(51,1,19,'intern');
INSERT INTO intervention_person VALUES(52,0,5,'mender');
INSERT INTO intervention_person VALUES(53,0,5,'mender');
INSERT INTO intervention_person VALUES(54,0,5,'mender');
INSERT INTO intervention_person VALUES(56,0,8,'attendant');
INSERT INTO intervention_person VALUES(57,0,13,'conservator');
INSERT INTO intervention_person VALUES(58,0,13,'conservator');
INSERT INTO intervention_person VALUES(59,0,13,'conservator');
INSERT INTO intervention_person VALUES(60,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(62,0,10,'technician');
INSERT INTO intervention_person VALUES(63,0,10,'technician');
INSERT INTO intervention_person VALUES(65,0,13,'conservator');
INSERT INTO intervention_person VALUES(66,0,13,'conservator');
INSERT INTO intervention_person VALUES(67,0,13,'conservator');
INSERT INTO intervention_person VALUES(70,0,5,'carpenter');
INSERT INTO intervention_person VALUES(71,0,5,'carpenter');
INSERT INTO intervention_person VALUES(74,0,8,'attendant');
INSERT INTO intervention_person VALUES(75,0,10,'technician');
INSERT INTO intervention_person VALUES(77,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(78,0,16,'conservator');
INSERT INTO intervention_person VALUES(82,0,7,'mason');
INSERT INTO intervention_person VALUES(83,0,7,'mason');
INSERT INTO intervention_person VALUES(84,0,10,'technician');
INSERT INTO intervention_person VALUES(85,0,10,'technician');
INSERT INTO intervention_person VALUES(86,0,11,'conservator');
INSERT INTO intervention_person VALUES(87,0,16,'conservator');
INSERT INTO intervention_person VALUES(87,1,15,'conservation scientist');
INSERT INTO intervention_person VALUES(88,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(89,0,16,'conservator');
INSERT INTO intervention_person VALUES(90,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(93,0,8,'attendant');
INSERT INTO intervention_person VALUES(94,0,8,'attendant');
INSERT INTO intervention_person VALUES(98,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(99,0,14,'senior conservator');
INSERT INTO intervention_person VALUES(100,0,16,'conservator');
INSERT INTO intervention_person VALUES(103,0,8,'attendant');
INSERT INTO intervention_person VALUES(104,0,8,'attendant');
INSERT INTO intervention_person VALUES(106,0,16,'conservator');
INSERT INTO intervention_person VALUES(107,0,16,'conservator');
INSERT INTO intervention_person VALUES(108,0,16,'conservator');
INSERT INTO intervention_person VALUES(109,0,16,'conservator');
INSERT INTO intervention_person VALUES(112,0,5,'mender');
INSERT INTO intervention_person VALUES(113,0,5,'mender');
INSERT INTO intervention_person VALUES(115,0,11,'conservator');
INSERT INTO intervention_person VALUES(116,0,11,'conservator');
INSERT INTO intervention_person VALUES(117,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(117,1,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(118,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(119,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(121,0,10,'technician');
INSERT INTO intervention_person VALUES(122,0,10,'technician');
INSERT INTO intervention_person VALUES(124,0,13,'conservator');
INSERT INTO intervention_person VALUES(125,0,13,'conservator');
INSERT INTO intervention_person VALUES(126,0,13,'conservator');
INSERT INTO intervention_person VALUES(127,0,19,'intern');
INSERT INTO intervention_person VALUES(127,1,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(130,0,5,'carpenter');
INSERT INTO intervention_person VALUES(131,0,5,'carpenter');
INSERT INTO intervention_person VALUES(132,0,12,'conservator');
INSERT INTO intervention_person VALUES(133,0,12,'conservator');
INSERT INTO intervention_person VALUES(134,0,12,'conservator');
INSERT INTO intervention_person VALUES(135,0,17,'head of objects conservation');
INSERT INTO intervention_person VALUES(138,0,5,'carpenter');
INSERT INTO intervention_person VALUES(139,0,10,'technician');
INSERT INTO intervention_person VALUES(140,0,10,'technician');
INSERT INTO intervention_person VALUES(141,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(142,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(143,0,12,'stone conservator');
INSERT INTO intervention_person VALUES(145,0,7,'mason');
INSERT INTO intervention_person VALUES(146,0,7,'mason');
INSERT INTO intervention_person VALUES(147,0,8,'attendant');
INSERT INTO intervention_person VALUES(148,0,8,'attendant');
INSERT INTO intervention_person VALUES(150,0,16,'conservator');
INSERT INTO intervention_person VALUES(151,0,16,'conservator');
INSERT INTO intervention_person VALUES(152,0,16,'conservator');
INSERT INTO intervention_person VALUES(153,0,16,'conservator');
INSERT INTO intervention_person VALUES(154,0,6,'mender');
INSERT INTO intervention_person VALUES(155,0,6,'mender');
INSERT INTO intervention_person VALUES(157,0,7,'mason');
INSERT INTO intervention_person VALUES(158,0,7,'mason');
INSERT INTO intervention_person VALUES(159,0,8,'attendant');
INSERT INTO intervention_person VALUES(160,0,8,'attendant');
INSERT INTO intervention_person VALUES(161,0,11,'conservator');
INSERT INTO intervention_person VALUES(162,0,11,'conservator');
INSERT INTO intervention_person VALUES(164,0,11,'conservator');
INSERT INTO intervention_person VALUES(165,0,13,'conservator');
INSERT INTO intervention_person VALUES(166,0,13,'conservator');
INSERT INTO intervention_person VALUES(167,0,13,'conservator');
INSERT INTO intervention_person VALUES(168,0,13,'conservator');
INSERT INTO intervention_person VALUES(169,0,13,'conservator');
INSERT INTO intervention_person VALUES(170,0,15,'conservation scientist');
INSERT INTO intervention_person VALUES(171,0,17,'head of objects conservation');
CREATE TABLE place (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	mark TEXT NOT NULL, 
	mark_folded TEXT NOT NULL, 
	kind TEXT, 
	component_id INTEGER, 
	other_component_id INTEGER, 
	name TEXT, 
	name_folded TEXT, 
	geometry TEXT, 
	arose TEXT, 
	arose_words TEXT, 
	arose_edtf TEXT, 
	arose_earliest INTEGER NOT NULL, 
	arose_latest INTEGER NOT NULL, 
	arose_flags INTEGER NOT NULL, 
	arose_derived TEXT NOT NULL, 
	fit TEXT, 
	load_kg REAL, 
	load_source_id INTEGER, 
	access TEXT, 
	note TEXT, 
	CONSTRAINT ck_place_arose_known CHECK (arose IN ('making', 'breaking')), 
	CONSTRAINT ck_place_only_joints_have_side_b CHECK (kind = 'joint' OR other_component_id IS NULL), 
	CONSTRAINT ck_place_kind_known CHECK (kind IN ('joint', 'surface', 'body', 'cavity')), 
	CONSTRAINT ck_place_arose_in_order CHECK (arose_earliest <= arose_latest), 
	CONSTRAINT ck_place_load_positive CHECK (load_kg >= 0), 
	CONSTRAINT fk_place_load_source_id FOREIGN KEY(load_source_id) REFERENCES source (id), 
	CONSTRAINT fk_place_object_id_component_id FOREIGN KEY(object_id, component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_place_object_id_other_component_id FOREIGN KEY(object_id, other_component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_place_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT uq_place_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_place_object_id_mark_folded UNIQUE (object_id, mark_folded), 
	CONSTRAINT uq_place_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO place VALUES(1,'641a664f-de5f-5b67-9716-427ddf9af407','2026-11-02',1,'J01','j01','joint',1,2,'plinth to pedestal','plinth to pedestal','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 6 to 9 mm',1300.0,18,'front and sides; back hidden','Carries pedestal, basin and lip.');
INSERT INTO place VALUES(2,'e7fa0ee4-a2da-5da9-9a8a-aaf7c399e0cb','2026-11-02',1,'J02','j02','joint',2,3,'pedestal to left basin half','pedestal to left basin half','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 5 mm',560.0,18,'under the basin, lying down only',NULL);
INSERT INTO place VALUES(3,'f6c89d75-121e-5f90-978d-4925486ef575','2026-11-02',1,'J03','j03','joint',2,4,'pedestal to right basin half','pedestal to right basin half','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 5 mm',565.0,18,'under the basin, lying down only',NULL);
INSERT INTO place VALUES(4,'6602f634-c772-5944-a0c7-5ba937d94e06','2026-11-02',1,'J04','j04','joint',3,4,'between the basin halves','between the basin halves','butt joint, cramped','making',NULL,NULL,-8000000,8000000,0,'blank','gap 3 mm, open at the outlet',NULL,NULL,'both faces','Was the watertight seam. The halves stand on the pedestal; the seam carries nothing.');
INSERT INTO place VALUES(5,'40510867-0e95-5b01-acab-5eff84350d76','2026-11-02',1,'J05','j05','joint',3,6,'left basin half to lip','left basin half to lip','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 4 mm',118.0,18,'front edge only',NULL);
INSERT INTO place VALUES(6,'d0514fc4-2276-52b9-88b7-7f380eec9d8c','2026-11-02',1,'J06','j06','joint',6,7,'lip left to lip centre','lip left to lip centre','butt joint, cramped','making',NULL,NULL,-8000000,8000000,0,'blank','step 2 mm',NULL,NULL,'top and front','The cramp that rusted here cracked both blocks.');
INSERT INTO place VALUES(7,'fe060353-3cf4-544d-8599-8d6480840eee','2026-11-02',1,'J07','j07','joint',7,8,'lip centre to lip right','lip centre to lip right','butt joint','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,'top and front',NULL);
INSERT INTO place VALUES(8,'50349a98-fec8-54b0-a779-f88dadcd3870','2026-11-02',1,'J08','j08','joint',4,8,'right basin half to lip','right basin half to lip','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 4 mm',115.0,18,'front edge only',NULL);
INSERT INTO place VALUES(9,'dc37e0f2-3ec7-5977-9935-a8d3f72d8fad','2026-11-02',1,'J09','j09','joint',3,7,'left basin half to lip centre','left basin half to lip centre','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 4 mm',226.0,18,'front edge only','Carries the lip and, through it, the right dolphin.');
INSERT INTO place VALUES(10,'f8611f60-28dd-5b95-8e28-37593a2ac2f9','2026-11-02',1,'J10','j10','joint',1,5,'plinth to lower back slab','plinth to lower back slab','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','wedged',1480.0,18,'front; back since 2013','Stands on the frame since 2013, the bed is empty.');
INSERT INTO place VALUES(11,'572a07ef-c4b2-55e2-af57-3e25c4fca7e7','2026-11-02',1,'J11','j11','joint',5,9,'lower to upper left slab','lower to upper left slab','bed joint, dowelled','making',NULL,NULL,-8000000,8000000,0,'blank','gap 6 mm',540.0,18,'front and back',NULL);
INSERT INTO place VALUES(12,'15742ad3-017f-55aa-bff8-f846edc0ce3c','2026-11-02',1,'J12','j12','joint',5,10,'lower to upper right slab','lower to upper right slab','bed joint','making',NULL,NULL,-8000000,8000000,0,'blank','gap 6 mm',545.0,18,'front and back',NULL);
INSERT INTO place VALUES(13,'626ef42f-a29b-5656-b260-f75cc2f63700','2026-11-02',1,'J13','j13','joint',9,10,'between the upper slabs','between the upper slabs','butt joint','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,'front and back',NULL);
INSERT INTO place VALUES(14,'7285459a-d073-5977-937e-0514aae57716','2026-11-02',1,'J14','j14','joint',7,12,'basin lip to right dolphin','basin lip to right dolphin','seat, cramped','making',NULL,NULL,-8000000,8000000,0,'blank','gap 2 mm in front, tight behind',85.0,18,'front and left edge; no sight of the cramp','The joint to read before anyone lifts the dolphin.');
INSERT INTO place VALUES(15,'d34bcfa8-5912-5048-afc4-ec41d5bde2a0','2026-11-02',1,'J15','j15','joint',12,13,'break at the tail fin','break at the tail fin','break edge','breaking','1868','1868',681908,682273,0,'edtf','worn, edges rounded',1.9,18,'free on all sides','Three mends, none of which held.');
INSERT INTO place VALUES(16,'2abfce85-516a-5c0b-b2b2-e0889e22118b','2026-11-02',1,'J16','j16','joint',6,11,'basin lip to left dolphin','basin lip to left dolphin','seat, pinned','making',NULL,NULL,-8000000,8000000,0,'blank','tight',82.0,18,'all round',NULL);
INSERT INTO place VALUES(17,'12dd2861-1fc0-54ff-9433-bd3ac254d9f8','2026-11-02',1,'J17','j17','joint',9,15,'upper left slab to shell','upper left slab to shell','bed joint, pinned','making',NULL,NULL,-8000000,8000000,0,'blank','gap 3 mm',95.0,15,'front; ladder',NULL);
INSERT INTO place VALUES(18,'61424295-c811-5a44-beec-26e86c073e59','2026-11-02',1,'J18','j18','joint',10,15,'upper right slab to shell','upper right slab to shell','bed joint, pinned','making',NULL,NULL,-8000000,8000000,0,'blank','gap 3 mm',95.0,15,'front; ladder','Half of the shell hangs on this joint, in front of the wall line.');
INSERT INTO place VALUES(19,'13901769-b2ec-5f93-b72f-46aa11d69143','2026-11-02',1,'J19','j19','joint',15,16,'break at the left scroll','break at the left scroll','break edge','breaking','1868','1868',681908,682273,0,'edtf','close, one chip missing',9.5,18,'from below','Hangs free.');
INSERT INTO place VALUES(20,'6b0c9d57-8d14-5608-8816-411a810d68be','2026-11-02',1,'J20','j20','joint',9,17,'seat of the left urn','seat of the left urn','seat','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free since the urn went',NULL);
INSERT INTO place VALUES(21,'90398dac-e1d6-556c-b0dc-747f9f15cd59','2026-11-02',1,'J21','j21','joint',10,18,'seat of the right urn','seat of the right urn','seat','making','1868','1868',681908,682273,0,'edtf','gap 5 mm',33.0,15,'all round; ladder',NULL);
INSERT INTO place VALUES(22,'d6a9a630-dad8-54f9-9977-f0dbb3b11411','2026-11-02',1,'J22','j22','joint',9,19,'North mask in its recess','north mask in its recess','socket','making',NULL,NULL,-8000000,8000000,0,'blank','gap 2 to 4 mm',14.0,18,'edge only',NULL);
INSERT INTO place VALUES(23,'aaea2440-fefb-5dd8-a375-a0bb5f962ca1','2026-11-02',1,'J23','j23','joint',9,20,'East mask in its recess','east mask in its recess','socket','making',NULL,NULL,-8000000,8000000,0,'blank','gap 2 to 4 mm',14.0,18,'edge only',NULL);
INSERT INTO place VALUES(24,'f311e218-e0f1-51c4-bab9-d2004e88f37e','2026-11-02',1,'J24','j24','joint',10,21,'South mask in its recess','south mask in its recess','socket','making','1868?','1868?',681908,682273,1,'edtf','gap up to 8 mm, recess recut',16.0,18,'edge only',NULL);
INSERT INTO place VALUES(25,'ea7d8ac6-acda-5bd6-b314-c19f903dbbe2','2026-11-02',1,'J25','j25','joint',10,22,'West mask in its recess','west mask in its recess','socket','making',NULL,NULL,-8000000,8000000,0,'blank','gap 2 to 4 mm',14.0,18,'free','Empty since 2012.');
INSERT INTO place VALUES(26,'90e89200-7dd4-551e-b8a8-c1754c25d0c4','2026-11-02',1,'J26','j26','joint',19,24,'armature in the North mask','armature in the north mask','socket','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(27,'46a7f2a6-556a-5aa6-9695-2d0596e7a362','2026-11-02',1,'J27','j27','joint',9,24,'armature of the North mask in the wall','armature of the north mask in the wall','socket','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,14.0,18,'hidden',NULL);
INSERT INTO place VALUES(28,'8e7bd0b4-3f36-5549-8dcc-ee94d1d7c86b','2026-11-02',1,'J28','j28','joint',22,25,'armature in the West mask','armature in the west mask','socket','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(29,'881961f1-c7fc-5133-bbb6-e7fcf0040f59','2026-11-02',1,'J29','j29','joint',10,25,'armature of the West mask in the wall','armature of the west mask in the wall','socket','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(30,'367264ee-f7c9-538d-ad95-43cc64167d02','2026-11-02',1,'J30','j30','joint',11,23,'spout in the left dolphin','spout in the left dolphin','sleeve','making',NULL,NULL,-8000000,8000000,0,'blank','tight',1.6,18,'front edge',NULL);
INSERT INTO place VALUES(31,'4780b1f1-3fc6-5e47-ad56-18e81e29a2da','2026-11-02',1,'J31','j31','joint',3,26,'cramp K1, left leg','cramp k1, left leg','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden under the pointing',NULL);
INSERT INTO place VALUES(32,'b3267143-2cf7-5ea4-b586-51a9efeffcd1','2026-11-02',1,'J32','j32','joint',4,26,'cramp K1, right leg','cramp k1, right leg','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden under the pointing',NULL);
INSERT INTO place VALUES(33,'95920734-4acb-566e-9b7a-ce002a493133','2026-11-02',1,'J33','j33','joint',6,27,'cramp K2, left leg','cramp k2, left leg','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free','Empty socket, packed with the filler of 1967.');
INSERT INTO place VALUES(34,'44e241a3-aac4-570f-8262-bbff58e8c1f0','2026-11-02',1,'J34','j34','joint',7,27,'cramp K2, right leg','cramp k2, right leg','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'closed in','The sawn leg is still here and rusts.');
INSERT INTO place VALUES(35,'9c2610ef-5e3a-5b7e-a428-3e75a24d3c2e','2026-11-02',1,'J35','j35','joint',7,28,'cramp K3 in the lip','cramp k3 in the lip','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(36,'0d664f81-5ee7-53af-a2bd-753fe3f97377','2026-11-02',1,'J36','j36','joint',12,28,'cramp K3 in the dolphin','cramp k3 in the dolphin','socket, leaded','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(37,'aa953643-ba7e-5dd3-b78d-2619df4f144a','2026-11-02',1,'J37','j37','joint',5,29,'dowel D1, lower end','dowel d1, lower end','socket','making','1868','1868',681908,682273,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(38,'93aac7c2-0bd4-5bf5-af60-e25b6140d87e','2026-11-02',1,'J38','j38','joint',9,29,'dowel D1, upper end','dowel d1, upper end','socket','making','1868','1868',681908,682273,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(39,'d0ee2957-01b7-5a76-8fff-1300ffda620f','2026-11-02',1,'J39','j39','joint',6,30,'pin N1 in the left lip','pin n1 in the left lip','drilled hole','making','1967','1967',718067,718431,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(40,'1bca29d1-ff15-5ba1-ba2a-ff9418bb1018','2026-11-02',1,'J40','j40','joint',7,30,'pin N1 in the centre lip','pin n1 in the centre lip','drilled hole','making','1967','1967',718067,718431,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(41,'584593b5-a7fe-5e42-9224-ce149083f4c4','2026-11-02',1,'J41','j41','joint',7,31,'pin N2 in the centre lip','pin n2 in the centre lip','drilled hole','making','1967','1967',718067,718431,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(42,'e413d7db-0b55-5abe-b72c-cbec19af06e3','2026-11-02',1,'J42','j42','joint',8,31,'pin N2 in the right lip','pin n2 in the right lip','drilled hole','making','1967','1967',718067,718431,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(43,'0a479897-2606-5781-9a49-ec543c7b7f08','2026-11-02',1,'J43','j43','joint',6,32,'rod R1 in the lip','rod r1 in the lip','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,82.0,18,'hidden',NULL);
INSERT INTO place VALUES(44,'6085dd85-8f16-5dce-ab29-48befcef8d48','2026-11-02',1,'J44','j44','joint',11,32,'rod R1 in the left dolphin','rod r1 in the left dolphin','drilled hole, sleeved since 2012','making','1989','1989',726103,726467,0,'edtf',NULL,82.0,18,'hidden',NULL);
INSERT INTO place VALUES(45,'7a363683-dc29-574d-8d14-8e7e158fa64c','2026-11-02',1,'J45','j45','joint',9,33,'rod R2 in the left slab','rod r2 in the left slab','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(46,'00175989-aba3-56ba-8e39-b778a645b0b6','2026-11-02',1,'J46','j46','joint',10,33,'rod R2 in the right slab','rod r2 in the right slab','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(47,'57720a27-e532-53b7-9200-12f622c3dca9','2026-11-02',1,'J47','j47','joint',9,34,'rod R3 in the slab','rod r3 in the slab','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,95.0,15,'hidden',NULL);
INSERT INTO place VALUES(48,'800f98bb-7cc4-588d-8ce7-c44f00b5ebed','2026-11-02',1,'J48','j48','joint',15,34,'rod R3 in the shell','rod r3 in the shell','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,95.0,15,'hidden',NULL);
INSERT INTO place VALUES(49,'6e91de58-b04c-5f98-b20b-47e94addd237','2026-11-02',1,'J49','j49','joint',10,35,'rod R4 in the slab','rod r4 in the slab','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,95.0,15,'hidden',NULL);
INSERT INTO place VALUES(50,'52d4543b-e132-5074-96f7-49ec1316eddd','2026-11-02',1,'J50','j50','joint',15,35,'rod R4 in the shell','rod r4 in the shell','drilled hole','making','1989','1989',726103,726467,0,'edtf',NULL,95.0,15,'hidden',NULL);
INSERT INTO place VALUES(51,'ea4be51e-b6ef-5200-a9a8-67d81e1574a6','2026-11-02',1,'J51','j51','joint',7,36,'pin P1 in the lip','pin p1 in the lip',NULL,'making','between 1741 and 2011','1741/2011',635523,734502,0,'words',NULL,NULL,NULL,'hidden','Nothing known of its setting.');
INSERT INTO place VALUES(52,'32da8ffc-222c-54c7-be3e-1450cdc1c5a5','2026-11-02',1,'J52','j52','joint',12,36,'pin P1 in the dolphin','pin p1 in the dolphin',NULL,'making','between 1741 and 2011','1741/2011',635523,734502,0,'words',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(53,'fb6f77d8-5caf-50fe-bfcd-34597f574520','2026-11-02',1,'J53','j53','joint',7,37,'pin P2 in the lip','pin p2 in the lip',NULL,'making','between 1741 and 2011','1741/2011',635523,734502,0,'words',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(54,'16cae099-4c77-5c24-98e5-bbcbbc1a8486','2026-11-02',1,'J54','j54','joint',12,37,'pin P2 in the dolphin','pin p2 in the dolphin',NULL,'making','between 1741 and 2011','1741/2011',635523,734502,0,'words',NULL,NULL,NULL,'mouth of the hole under a fill, back of the dolphin',NULL);
INSERT INTO place VALUES(55,'2ad5f54c-1711-508c-984d-234cf17f2d14','2026-11-02',1,'S01','s01','surface',3,NULL,'inside of the left basin half','inside of the left basin half',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(56,'47e0a3fa-ca72-51f5-b3e8-9770717a0b66','2026-11-02',1,'S02','s02','surface',7,NULL,'top and front of the centre lip','top and front of the centre lip',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free','Where hands lean and where the water ran over.');
INSERT INTO place VALUES(57,'b6243c61-3b74-5a93-b3ba-e61314b8e30d','2026-11-02',1,'S03','s03','surface',4,NULL,'inside of the right basin half','inside of the right basin half',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(58,'23f96bcb-e8ec-5168-85a0-c80d81908e5e','2026-11-02',1,'S04','s04','surface',5,NULL,'front of the lower back slab','front of the lower back slab',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(59,'6e1aac1d-0635-5039-bf38-77999c4e4262','2026-11-02',1,'S05','s05','surface',12,NULL,'skin of the right dolphin','skin of the right dolphin',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(60,'2647d619-431d-5e12-900a-28c520307500','2026-11-02',1,'S06','s06','surface',11,NULL,'skin of the left dolphin','skin of the left dolphin',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(61,'d3362f65-bfda-51e2-b39f-e282302e9c0a','2026-11-02',1,'S07','s07','surface',15,NULL,'fluted front of the shell','fluted front of the shell',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'ladder',NULL);
INSERT INTO place VALUES(62,'92a58c20-536a-54b1-a8ea-8eda9f75ceb3','2026-11-02',1,'S08','s08','surface',19,NULL,'face of the North mask','face of the north mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(63,'ad4300c5-3518-5b0a-965c-f2eee3bd9fa2','2026-11-02',1,'S09','s09','surface',20,NULL,'face of the East mask','face of the east mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(64,'2b780cdd-9b5c-5973-b6ed-8cbc3fc65d70','2026-11-02',1,'S10','s10','surface',21,NULL,'face of the South mask','face of the south mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(65,'413866d1-edd1-57b7-b672-3cb2b0fdbdc7','2026-11-02',1,'S11','s11','surface',22,NULL,'face of the West mask','face of the west mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(66,'8ee4121a-4e09-5076-b615-ff087fa779a7','2026-11-02',1,'S12','s12','surface',18,NULL,'skin of the right urn','skin of the right urn',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'ladder',NULL);
INSERT INTO place VALUES(67,'557c46a8-8e8d-5e12-b473-b7404b98341d','2026-11-02',1,'M05','m05','body',5,NULL,'stone of the lower back slab','stone of the lower back slab',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'by drilling',NULL);
INSERT INTO place VALUES(68,'b7f5af55-77b5-532c-baa7-609c690981e1','2026-11-02',1,'M06','m06','body',6,NULL,'stone of the left lip','stone of the left lip',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'at the seat of the dolphin',NULL);
INSERT INTO place VALUES(69,'439b8b8f-bd04-54f0-8d7f-d884d5f2257d','2026-11-02',1,'M07','m07','body',7,NULL,'stone of the centre lip','stone of the centre lip',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'at the front edge',NULL);
INSERT INTO place VALUES(70,'fc82f04c-441f-587e-9d2a-323f8cde5aa3','2026-11-02',1,'M12','m12','body',13,NULL,'stone of the tail fin','stone of the tail fin',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'at the break',NULL);
INSERT INTO place VALUES(71,'b9b8cdc0-b82d-593b-994c-215034327011','2026-11-02',1,'M13','m13','body',15,NULL,'stone of the shell','stone of the shell',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'from below',NULL);
INSERT INTO place VALUES(72,'e4c410b7-7f88-5fcb-95ed-4a91415a76b8','2026-11-02',1,'C01','c01','cavity',19,NULL,'hollow of the North mask','hollow of the north mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'endoscope, through the mouth',NULL);
INSERT INTO place VALUES(73,'1fc0fc35-17a2-5767-afff-bb09af79c417','2026-11-02',1,'C02','c02','cavity',3,NULL,'outlet of the basin','outlet of the basin',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'from above',NULL);
INSERT INTO place VALUES(74,'cf28ef6a-d93e-5954-b5ba-89b13ee38015','2026-11-02',1,'C03','c03','cavity',22,NULL,'hollow of the West mask','hollow of the west mask',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(75,'db1c7bd9-a170-5ea2-a11f-de4a13323f3d','2026-11-02',1,'C04','c04','cavity',7,NULL,'socket behind the sawn cramp','socket behind the sawn cramp',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'closed',NULL);
INSERT INTO place VALUES(76,'496c0294-1dc9-503f-850c-8e14540a64b0','2026-11-02',3,'J1','j1','joint',38,39,'main break','main break','break edge','breaking','1894','1894',691405,691769,0,'edtf','edges rubbed',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(77,'685127f0-ade0-5799-b9dc-1e78d53214b6','2026-11-02',3,'J2','j2','joint',39,40,'top rim sherd','top rim sherd','break edge','breaking','1894','1894',691405,691769,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(78,'a1f96ec1-c078-5a21-865e-310ab8a8c2b8','2026-11-02',3,'J3','j3','joint',39,41,'right rim sherd','right rim sherd','break edge','breaking','1894','1894',691405,691769,0,'edtf','step 0.5 mm',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(79,'3f59a63b-8789-58ec-8bc1-5908d040444a','2026-11-02',3,'J4','j4','joint',38,42,'bottom rim sherd','bottom rim sherd','break edge','breaking','1894','1894',691405,691769,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(80,'23273215-09d8-52fb-a06e-e1581da58d98','2026-11-02',3,'C1','c1','cavity',38,NULL,'loss at the bottom rim','loss at the bottom rim',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(81,'546b9d68-2668-586f-a317-9ddce8357f1b','2026-11-02',3,'S1','s1','surface',38,NULL,'front, glazed','front, glazed',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(82,'466d664c-a107-5000-8c05-21aeff503517','2026-11-02',3,'S2','s2','surface',39,NULL,'back, unglazed','back, unglazed',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(83,'b068ac9f-8279-58dd-ae14-ed522f97dee3','2026-11-02',4,'J1','j1','joint',43,44,'figure on the base','figure on the base','break edge','breaking','before 1911','../1910',-9000000,697612,0,'words','tight',0.4,35,'behind the skirt only',NULL);
INSERT INTO place VALUES(84,'26e6ca30-44bb-586d-a6ea-2aabdf5f1d9b','2026-11-02',4,'J2','j2','joint',44,45,'neck','neck','break edge, dowelled','breaking','before 1911','../1910',-9000000,697612,0,'words','turned 3 degrees',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(85,'dc2136b6-433b-51b1-b9a2-a6fcbd92f0b7','2026-11-02',4,'J3','j3','joint',44,46,'left wrist, first hand','left wrist, first hand','break edge','breaking','before 1941','../1940',-9000000,708570,0,'words',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(86,'e7218106-f354-5e86-b288-dbb976189a9a','2026-11-02',4,'J4','j4','joint',44,48,'left wrist, cast hand','left wrist, cast hand','sleeve','making','2003','2003',731216,731580,0,'edtf','tight',NULL,NULL,'free',NULL);
INSERT INTO place VALUES(87,'7612835d-a32f-5f46-9bf1-4946475c68de','2026-11-02',4,'J5','j5','joint',43,47,'corner of the net','corner of the net','break edge','breaking','1972','1972',719893,720258,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(88,'3c19fdad-df1d-5b09-b4eb-4142513fe5b4','2026-11-02',4,'J6','j6','joint',44,50,'dowel in the body','dowel in the body','drilled hole','making','before 1972','../1971',-9000000,719892,0,'words',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(89,'578ea46b-54eb-5f03-b53d-e2f4204599cf','2026-11-02',4,'J7','j7','joint',45,50,'dowel in the head','dowel in the head','drilled hole','making','before 1972','../1971',-9000000,719892,0,'words',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(90,'8619f6e4-2e79-5adc-95ca-c8bdf2ae4741','2026-11-02',4,'S1','s1','surface',44,NULL,'dress and apron','dress and apron',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(91,'29ac9fab-f60e-5347-8f30-46ec645b6d8e','2026-11-02',5,'J1','j1','joint',52,53,'front to left end','front to left end','dovetail','making',NULL,NULL,-8000000,8000000,0,'blank','open 1 mm at the top',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(92,'b01cd895-8424-544b-8280-b9de795458bc','2026-11-02',5,'J2','j2','joint',52,54,'front to right end','front to right end','dovetail','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(93,'78ce4d4e-053a-5a64-b17d-482600d2f5d1','2026-11-02',5,'J3','j3','joint',51,57,'left hinge on the lid','left hinge on the lid','nailed','making',NULL,NULL,-8000000,8000000,0,'blank','loose',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(94,'dc77bd97-914f-5387-9c49-56016cfbb82c','2026-11-02',5,'J4','j4','joint',51,58,'right hinge on the lid','right hinge on the lid','screwed','making','1890s','189X',689944,693595,0,'words','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(95,'819ff57c-db23-57e3-9c07-99c68f7995d5','2026-11-02',5,'J5','j5','joint',52,59,'patch in the front','patch in the front','let in','making','1904','1904',695056,695421,0,'edtf','shrunk, gap 0.8 mm',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(96,'23fecedf-8a39-5e48-adc8-e87c36756455','2026-11-02',5,'S1','s1','surface',51,NULL,'top of the lid','top of the lid',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(97,'dd0da58a-97bb-5e26-b44a-185ca389ff56','2026-11-02',5,'S2','s2','surface',52,NULL,'front','front',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(98,'1d84061c-70b9-5b55-8051-3878f4aaaa5e','2026-11-02',5,'M1','m1','body',52,NULL,'wood of the front','wood of the front',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'by drilling','Worm along the lower edge.');
INSERT INTO place VALUES(99,'400516ea-bdba-563b-9dbb-3dea4c69b22b','2026-11-02',5,'M2','m2','body',53,NULL,'wood of the left end','wood of the left end',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(100,'65026d6f-6ab5-50c0-8291-98480c9b775a','2026-11-02',6,'J1','j1','joint',60,61,'neck','neck','lap, bolted','making',NULL,NULL,-8000000,8000000,0,'blank','gap up to 4 mm',9.0,38,'front only',NULL);
INSERT INTO place VALUES(101,'d3a728c3-c8fe-5cdd-af9e-1647aafe2329','2026-11-02',6,'J2','j2','joint',60,63,'right shoulder','right shoulder','mortise and tenon','making',NULL,NULL,-8000000,8000000,0,'blank','loose',6.0,38,NULL,NULL);
INSERT INTO place VALUES(102,'0861d69b-9674-5844-92bc-d7ab9c5e9010','2026-11-02',6,'J3','j3','joint',60,65,'splice in the left shoulder','splice in the left shoulder','let in','making','1926','1926',703092,703456,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(103,'38b39dd6-4dfc-510a-8f05-090bd17bee98','2026-11-02',6,'J4','j4','joint',60,64,'body on the scroll','body on the scroll','seat, bolted','making',NULL,NULL,-8000000,8000000,0,'blank','gap 2 mm',105.0,38,'back',NULL);
INSERT INTO place VALUES(104,'84f0dcb2-9778-5e81-8732-59c78e8af2c5','2026-11-02',6,'J5','j5','joint',60,66,'bolt in the body','bolt in the body','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(105,'358a0136-71eb-538a-9988-704421915ca5','2026-11-02',6,'J6','j6','joint',64,66,'bolt in the scroll','bolt in the scroll','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'back',NULL);
INSERT INTO place VALUES(106,'856ff684-6457-5d06-b838-65baf72f7452','2026-11-02',6,'J7','j7','joint',60,67,'bolt in the body, neck','bolt in the body, neck','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(107,'1b3f1656-8cf4-5bf4-bd10-6d22e219e1f1','2026-11-02',6,'J8','j8','joint',61,67,'bolt in the head','bolt in the head','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(108,'9ce138d3-b8af-5aff-9988-77128bcd1ae3','2026-11-02',6,'S1','s1','surface',61,NULL,'face and hair','face and hair',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(109,'88fe1c30-7ca3-517a-9f5c-0e80c750a59d','2026-11-02',6,'S2','s2','surface',60,NULL,'dress','dress',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(110,'78b5e7d2-883b-53a9-acf8-1abcff6bb938','2026-11-02',6,'M1','m1','body',60,NULL,'wood below the knees','wood below the knees',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'from the pocket',NULL);
INSERT INTO place VALUES(111,'984e6763-505c-52a4-bf9b-ff6e63de96ae','2026-11-02',6,'C1','c1','cavity',60,NULL,'rot pocket behind the knees','rot pocket behind the knees',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(112,'3b320d49-f0f6-58bd-ab2c-e68f5f8aa414','2026-11-02',7,'J1','j1','joint',69,73,'left handle','left handle','soldered','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(113,'ade7e347-5c4a-5f03-a429-c2cbe5c3fdea','2026-11-02',7,'J2','j2','joint',69,74,'right handle','right handle','soldered','making','1911~','1911~',697613,697977,2,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(114,'47a1ba33-8027-561d-9c61-f79ef85b4a89','2026-11-02',7,'J3','j3','joint',69,70,'bowl on the stem','bowl on the stem','soldered','making',NULL,NULL,-8000000,8000000,0,'blank','leans 2 mm',1.2,32,NULL,NULL);
INSERT INTO place VALUES(115,'afc6eb67-a893-5f39-bc4d-8c60349c9c83','2026-11-02',7,'J4','j4','joint',71,72,'finial on the cover','finial on the cover','soldered','making',NULL,NULL,-8000000,8000000,0,'blank','loose',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(116,'ff0a61bd-0510-53c7-8747-8496ae714f82','2026-11-02',7,'S1','s1','surface',69,NULL,'outside of the bowl','outside of the bowl',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(117,'37bf87e8-0218-5c3d-be3c-d28061883003','2026-11-02',7,'S2','s2','surface',71,NULL,'outside of the cover','outside of the cover',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(118,'69e05b08-231c-5e8e-878e-d13239a92863','2026-11-02',8,'J1','j1','joint',77,78,'front pane in the frame','front pane in the frame','rebate','making',NULL,NULL,-8000000,8000000,0,'blank','rattles',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(119,'07f9b9cc-a0ea-5c94-b91e-ee4fc386d782','2026-11-02',8,'J2','j2','joint',77,79,'left pane in the frame','left pane in the frame','rebate','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(120,'5be0e05b-ed09-5c0b-ae73-e34d10198d15','2026-11-02',8,'J3','j3','joint',77,80,'right pane in the frame','right pane in the frame','rebate','making','1949','1949',711493,711857,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(121,'84f2cef3-cbdf-5138-810c-62f9fbc8f185','2026-11-02',8,'J4','j4','joint',77,81,'back pane in the frame','back pane in the frame','rebate','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(122,'0ac0d2f0-8dc5-567d-a0f1-798e746738f2','2026-11-02',8,'J5','j5','joint',76,82,'ring on the roof','ring on the roof','soldered','making',NULL,NULL,-8000000,8000000,0,'blank','tight',4.5,41,NULL,'Whoever lifts the lantern lifts it here.');
INSERT INTO place VALUES(123,'34397ae0-127c-5bf2-96ed-23b0356e073f','2026-11-02',8,'S1','s1','surface',76,NULL,'outside of the roof','outside of the roof',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(124,'54c24466-e141-573b-90e0-4df5dac585db','2026-11-02',8,'S2','s2','surface',77,NULL,'inside of the frame','inside of the frame',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(125,'e2c521b7-f8eb-5283-a0df-8c1685e9afba','2026-11-02',9,'J1','j1','joint',85,84,'bust on the socle','bust on the socle','seat','making',NULL,NULL,-8000000,8000000,0,'blank','rocks',27.0,40,'all round',NULL);
INSERT INTO place VALUES(126,'ab950985-1c35-5459-9c91-333daff89f71','2026-11-02',9,'J2','j2','joint',84,88,'nose','nose','let in','making','1899','1899',693231,693595,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(127,'8221ed39-d5f4-5ee2-8886-d1e29d7d535f','2026-11-02',9,'J3','j3','joint',84,86,'left ear','left ear','break edge','breaking','before 1952','../1951',-9000000,712587,0,'words','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(128,'94e2adf8-961d-5347-bf48-cb8600a80779','2026-11-02',9,'J4','j4','joint',84,87,'lapel','lapel','break edge','breaking','2017','2017',736330,736694,0,'edtf','crumbling',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(129,'1736652c-57cf-5cc2-aa8d-528fc548c570','2026-11-02',9,'J5','j5','joint',84,89,'armature in the cast','armature in the cast','cast in','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden','Rust has split the chest.');
INSERT INTO place VALUES(130,'8bfbb392-1be0-58e4-951e-f70b1fca69d4','2026-11-02',9,'S1','s1','surface',84,NULL,'face and front','face and front',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(131,'0f3543d8-42f0-5839-92f1-a067038ebb3d','2026-11-02',9,'S2','s2','surface',84,NULL,'hollow of the back','hollow of the back',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(132,'d8786ebb-b86b-5180-9ab2-5a5eb0b143b1','2026-11-02',9,'M1','m1','body',84,NULL,'plaster of the chest','plaster of the chest',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(133,'67c41169-bb44-58d4-af9a-b0b52db27f9a','2026-11-02',10,'J1','j1','joint',90,91,'long break','long break','break edge','breaking','before 1958','../1957',-9000000,714779,0,'words','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(134,'502f92b4-fbd8-54cd-9dd9-200b8decf385','2026-11-02',10,'J2','j2','joint',90,92,'break at the flag','break at the flag','break edge','breaking','before 1958','../1957',-9000000,714779,0,'words','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(135,'a4c5bc82-a0f9-553c-a9b0-b33a5057f6a5','2026-11-02',10,'J3','j3','joint',91,92,'between the sherds','between the sherds','break edge','breaking','before 1958','../1957',-9000000,714779,0,'words','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(136,'055640b3-49c5-5da3-9c81-13f9c5c4261f','2026-11-02',10,'J4','j4','joint',90,96,'rim fill in the gap','rim fill in the gap','fitted','making','1998','1998',729390,729754,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(137,'56ebb2e9-97c3-52c0-8628-c24af592e5e7','2026-11-02',10,'J5','j5','joint',90,94,'bowl to stem','bowl to stem','break edge','breaking','before 1958','../1957',-9000000,714779,0,'words','off centre 0.7 mm',0.24,34,NULL,NULL);
INSERT INTO place VALUES(138,'38e3db8d-3a41-5193-94ee-27405e4334fd','2026-11-02',10,'J6','j6','joint',94,95,'chip of the foot','chip of the foot','break edge','breaking','1997','1997',729025,729389,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(139,'09c42432-3d12-591c-bc0a-5e57fd28b066','2026-11-02',10,'S1','s1','surface',90,NULL,'outside of the bowl','outside of the bowl',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(140,'977b38a3-76dc-5d43-88fe-d9cdf32f17ea','2026-11-02',11,'J1','j1','joint',102,97,'sail in its lead','sail in its lead','came','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(141,'1422699e-9c05-5407-8707-1cbbc8423172','2026-11-02',11,'J2','j2','joint',102,98,'boat in its lead','boat in its lead','came','making',NULL,NULL,-8000000,8000000,0,'blank','loose',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(142,'624a99e9-a78c-5a45-b906-5fc746ce15f1','2026-11-02',11,'J3','j3','joint',102,100,'sky in its lead','sky in its lead','came','making','1893','1893',691040,691404,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(143,'7231f1ba-bc07-5161-bac0-7108dd095472','2026-11-02',11,'J4','j4','joint',98,NULL,'crack through the boat','crack through the boat','break edge','breaking','before 1894','../1893',-9000000,691404,0,'words','close',NULL,NULL,'both faces','One pane, broken across; A is the bow side.');
INSERT INTO place VALUES(144,'27690c5e-c942-5d68-b28a-4b3590f3745c','2026-11-02',11,'J5','j5','joint',102,103,'ties on the net','ties on the net','soldered','making','1893','1893',691040,691404,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(145,'56c6b864-b569-5838-a517-87d8c892bf07','2026-11-02',11,'J6','j6','joint',102,99,'pilot in its lead','pilot in its lead','came','making',NULL,NULL,-8000000,8000000,0,'blank','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(146,'d0493e7b-c204-5576-8f2e-009145568643','2026-11-02',11,'S1','s1','surface',99,NULL,'painted face, inside','painted face, inside',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(147,'a31db898-518f-5ad7-b4e9-81dd739d4b06','2026-11-02',11,'S2','s2','surface',97,NULL,'outside','outside',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(148,'50f0e742-1a61-5473-9c4e-1811bee5159d','2026-11-02',12,'J1','j1','joint',104,105,'break through the tablet','break through the tablet','break edge','breaking','before 1905','../1904',-9000000,695421,0,'words','tight',45.0,31,'front and edges',NULL);
INSERT INTO place VALUES(149,'657c7e9d-26a6-53bc-bb89-3c2e4369e40c','2026-11-02',12,'J2','j2','joint',105,106,'lower right corner','lower right corner','break edge','breaking','before 1905','../1904',-9000000,695421,0,'words','tight',2.1,31,NULL,NULL);
INSERT INTO place VALUES(150,'e4b4b7bd-e528-5031-98dd-a32f4fa20953','2026-11-02',12,'J3','j3','joint',109,104,'tablet on the backing','tablet on the backing','bedded','making','1906','1906',695787,696151,0,'edtf','hollow at the top',111.0,31,'edges',NULL);
INSERT INTO place VALUES(151,'daf5bea6-7bbb-5412-bbe6-0c80f55150a8','2026-11-02',12,'J4','j4','joint',104,107,'urn on the tablet','urn on the tablet','seat, dowelled','making',NULL,NULL,-8000000,8000000,0,'blank','tight',11.0,31,NULL,NULL);
INSERT INTO place VALUES(152,'22a97dbb-7fc8-50f6-9f62-e53c3a181d67','2026-11-02',12,'J5','j5','joint',104,108,'upper left corner','upper left corner','break edge','breaking','1940/1945','1940/1945',708205,710396,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(153,'de5f1f0a-b232-5bd1-9cd9-c241c6945095','2026-11-02',12,'J6','j6','joint',104,110,'dowel in the tablet','dowel in the tablet','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(154,'1f6b9fd7-01b3-5579-a260-da58c19cb855','2026-11-02',12,'J7','j7','joint',107,110,'dowel in the urn','dowel in the urn','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(155,'be1b2901-5f62-586b-ac53-b1621206aef6','2026-11-02',12,'J8','j8','joint',104,111,'dowel R2 in the left part','dowel r2 in the left part','drilled hole','making','1973','1973',720259,720623,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(156,'bad9fa28-5f26-53d5-bf05-551789aa417e','2026-11-02',12,'J9','j9','joint',105,111,'dowel R2 in the right part','dowel r2 in the right part','drilled hole','making','1973','1973',720259,720623,0,'edtf',NULL,NULL,NULL,'hidden',NULL);
INSERT INTO place VALUES(157,'936596a9-1d8a-539f-a325-f815131935aa','2026-11-02',12,'S1','s1','surface',104,NULL,'inscription','inscription',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(158,'72fadfc2-2bb7-59d9-b6b9-8e7d12f23b33','2026-11-02',12,'M1b','m1b','body',107,NULL,'marble behind the urn''s foot','marble behind the urn''s foot',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(159,'165bc2e0-4934-5129-b960-e63e154e677b','2026-11-02',13,'J1','j1','joint',114,112,'bell in the headstock','bell in the headstock','seat, bolted','making',NULL,NULL,-8000000,8000000,0,'blank','tight',41.0,41,'free',NULL);
INSERT INTO place VALUES(160,'970b22f5-be93-53e9-9b7c-9ac1ee74d2b5','2026-11-02',13,'J2','j2','joint',112,NULL,'crack from the lip','crack from the lip','crack','breaking','1907','1907',696152,696516,0,'edtf','hairline, 90 mm',NULL,NULL,'both faces','The lip beyond the crack is side B.');
INSERT INTO place VALUES(161,'ac59391a-ca32-5c99-a3c3-a0f08ed07e38','2026-11-02',13,'J3','j3','joint',112,113,'clapper on the staple','clapper on the staple','hinge','making','1938','1938',707475,707839,0,'edtf','free',2.4,41,NULL,NULL);
INSERT INTO place VALUES(162,'29f7e1c8-9dfc-58ca-beea-6297bd4b1467','2026-11-02',13,'J4','j4','joint',114,115,'front bolt in the headstock','front bolt in the headstock','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(163,'cb3d4166-d5d5-53c1-969e-8c9d15a88366','2026-11-02',13,'J5','j5','joint',112,115,'front bolt in the bell','front bolt in the bell','drilled hole','making',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(164,'cdb50779-9023-5204-990b-39c6436b07e1','2026-11-02',13,'J6','j6','joint',114,116,'back bolt in the headstock','back bolt in the headstock','drilled hole','making','1938','1938',707475,707839,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(165,'bdb42a17-7904-5dae-9c37-ddcd531eae0d','2026-11-02',13,'J7','j7','joint',112,116,'back bolt in the bell','back bolt in the bell','drilled hole','making','1938','1938',707475,707839,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(166,'39044901-d16d-559b-b339-a0533c5aeba7','2026-11-02',13,'S1','s1','surface',112,NULL,'outside','outside',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(167,'4df810c7-e25c-5fa6-a395-c0281a9dbd5c','2026-11-02',13,'S2','s2','surface',112,NULL,'inside','inside',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(168,'956e4d43-018f-5897-b2d9-7e55f20979f5','2026-11-02',13,'S3','s3','surface',114,NULL,'skin of the headstock','skin of the headstock',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(169,'8c63b066-923d-5f70-8a42-15c6d5c70516','2026-11-02',2,'J01','j01','joint',118,119,'larger part to smaller part','larger part to smaller part','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(170,'a3263aa1-499d-5dd4-acb2-123e0260035c','2026-11-02',2,'J02','j02','joint',119,120,'smaller part to prow of the first boat','smaller part to prow of the first boat','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(171,'c722cd23-b6b5-5e03-b653-ea0b91ac598f','2026-11-02',2,'J03','j03','joint',120,121,'prow of the first boat to oar','prow of the first boat to oar','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(172,'285086c9-84fd-507f-a533-6ebd3dcd3304','2026-11-02',2,'J04','j04','joint',121,122,'oar to sea','oar to sea','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(173,'96820c36-ddc9-59be-aa52-083d8303cd58','2026-11-02',2,'J05','j05','joint',122,123,'sea to sea and net float','sea to sea and net float','break edge','breaking','1889','1889',689579,689943,0,'edtf','step 0.4 mm',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(174,'31e70c55-7e55-58cd-a325-bf1fefffd80b','2026-11-02',2,'J06','j06','joint',123,124,'sea and net float to hull','sea and net float to hull','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(175,'3057a372-336c-5bde-97ac-f4d892b62ff4','2026-11-02',2,'J07','j07','joint',124,125,'hull to two fishermen','hull to two fishermen','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(176,'4763948b-d457-5289-8c83-b27de7f2dde2','2026-11-02',2,'J08','j08','joint',125,126,'two fishermen to mast','two fishermen to mast','break edge','breaking','1889','1889',689579,689943,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(177,'0e58a099-242a-5da2-9565-f31f46dd76f8','2026-11-02',2,'J09','j09','joint',126,127,'mast to sail left','mast to sail left','break edge','breaking','1889','1889',689579,689943,0,'edtf','tight',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(178,'8125e438-828a-5c7d-9f58-38aa2e847beb','2026-11-02',2,'J10','j10','joint',127,128,'sail left to sail right','sail left to sail right','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(179,'530457a8-5613-509c-9719-d5d2035eed07','2026-11-02',2,'J11','j11','joint',128,129,'sail right to gull','sail right to gull','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(180,'12222a06-9f0c-5719-bd2a-85a2158e07b7','2026-11-02',2,'J12','j12','joint',129,130,'gull to lighthouse','gull to lighthouse','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(181,'2faa55d2-19ef-56e2-9a25-e61f2a5d0fad','2026-11-02',2,'J13','j13','joint',130,131,'lighthouse to cloud','lighthouse to cloud','break edge','breaking','1889','1889',689579,689943,0,'edtf','sprung 0.6 mm',NULL,NULL,NULL,'Last to close: the ring had sprung.');
INSERT INTO place VALUES(182,'9bbbfedf-2a84-570d-a689-0b256d32cc8e','2026-11-02',2,'J14','j14','joint',131,132,'cloud to cloud and pennant','cloud to cloud and pennant','break edge','breaking','1889','1889',689579,689943,0,'edtf','gap 0.3 mm',NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(183,'d203b208-944c-5b2a-ab77-1f32bb99dabe','2026-11-02',2,'J15','j15','joint',132,133,'cloud and pennant to plain','cloud and pennant to plain','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(184,'231539c7-79a7-5edb-9b5f-9350c6f0d044','2026-11-02',2,'J16','j16','joint',133,134,'plain to front','plain to front','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(185,'2870eddb-2d3c-5d06-8765-9949cbe31695','2026-11-02',2,'J17','j17','joint',134,135,'front to front','front to front','break edge','breaking','1889','1889',689579,689943,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(186,'1c817afc-3a76-50c1-a3b5-334f0be044da','2026-11-02',2,'J18','j18','joint',135,139,'rim to its plaster part','rim to its plaster part','butt','making','1891','1891',690309,690673,0,'edtf',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(187,'2c6bf999-32aa-568d-8970-f436753db2da','2026-11-02',2,'J19','j19','joint',128,138,'left handle','left handle','break edge','breaking','1889','1889',689579,689943,0,'edtf','tight',0.31,33,NULL,NULL);
INSERT INTO place VALUES(188,'f11a9920-d34e-5c02-aeb7-360dbd62797b','2026-11-02',2,'J20','j20','joint',129,140,'right handle, plaster','right handle, plaster','dowelled butt','making','1936','1936',706744,707109,0,'edtf','loose',0.24,33,NULL,'No dowel was found in 1996.');
INSERT INTO place VALUES(189,'43386c19-0bf5-5783-87d9-718cc8501051','2026-11-02',2,'J21','j21','joint',122,141,'staple, left hole','staple, left hole','drilled hole','making','1891','1891',690309,690673,0,'edtf',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(190,'53e0f60b-56f2-557c-98ec-71cacd2fda9d','2026-11-02',2,'J22','j22','joint',123,141,'staple, right hole','staple, right hole','drilled hole','making','1891','1891',690309,690673,0,'edtf',NULL,NULL,NULL,'free',NULL);
INSERT INTO place VALUES(191,'bfec6761-6f0f-5f41-8921-7e7c40cdf26a','2026-11-02',2,'S01','s01','surface',128,NULL,'outside, glaze','outside, glaze',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(192,'47c208ce-549a-5140-b59b-6191a5a74482','2026-11-02',2,'S02','s02','surface',135,NULL,'rim, inside','rim, inside',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,NULL,NULL);
INSERT INTO place VALUES(193,'559f75a9-fa47-5ecc-97c4-4e5927e10f9a','2026-11-02',2,'M01','m01','body',126,NULL,'body of the mast sherd','body of the mast sherd',NULL,NULL,NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,NULL,'inner edge',NULL);
CREATE TABLE whereabouts (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	component_id INTEGER, 
	place_name TEXT, 
	since_words TEXT, 
	since_edtf TEXT, 
	since_earliest INTEGER NOT NULL, 
	since_latest INTEGER NOT NULL, 
	since_flags INTEGER NOT NULL, 
	since_derived TEXT NOT NULL, 
	until_words TEXT, 
	until_edtf TEXT, 
	until_earliest INTEGER NOT NULL, 
	until_latest INTEGER NOT NULL, 
	until_flags INTEGER NOT NULL, 
	until_derived TEXT NOT NULL, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_whereabouts_since_in_order CHECK (since_earliest <= since_latest), 
	CONSTRAINT ck_whereabouts_until_in_order CHECK (until_earliest <= until_latest), 
	CONSTRAINT fk_whereabouts_object_id_component_id FOREIGN KEY(object_id, component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_whereabouts_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_whereabouts_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_whereabouts_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_whereabouts_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO whereabouts VALUES(1,'cf9dc8b8-c69b-5bd2-8a44-6b57c7e91fe7','2026-11-02',1,'H01',NULL,'Ebbstone House, garden court','1741','1741',635523,635887,0,'edtf','summer 1868','1868-22',682060,682151,0,'words',2,NULL);
INSERT INTO whereabouts VALUES(2,'60bed875-152d-5425-83d6-c0b7a2d27f50','2026-11-02',1,'H02',NULL,'Custom House terrace, the Quay','1868','1868',681908,682273,0,'edtf','1958-04','1958-04',714870,714899,0,'edtf',3,'Given to the museum where it stood, 1902.');
INSERT INTO whereabouts VALUES(3,'1fdf91f0-7a7a-5f41-b437-63c53d467ae9','2026-11-02',1,'H03',NULL,'Museum, stair hall','1958-04','1958-04',714870,714899,0,'edtf','2011-09-26','2011-09-26',734406,734406,0,'edtf',11,NULL);
INSERT INTO whereabouts VALUES(4,'669ef5ea-b3b6-5991-9e9a-1a90b2f3af11','2026-11-02',1,'H04',NULL,'Studio 2','2011-09-26','2011-09-26',734406,734406,0,'edtf','2013-01','2013-01',734869,734899,0,'edtf',18,NULL);
INSERT INTO whereabouts VALUES(5,'2d2636b7-a2da-5e9a-b59b-43a963bad0d1','2026-11-02',1,'H05',NULL,'Store 3, bay 2','2013-01','2013-01',734869,734899,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,'On the steel frame.');
INSERT INTO whereabouts VALUES(6,'98665868-48b4-56a1-9235-8358bf4948f2','2026-11-02',1,'H06',27,'Store 3, drawer 14, box 3','1967','1967',718067,718431,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',12,'One leg of two.');
INSERT INTO whereabouts VALUES(7,'efe2b166-a8e2-5452-987d-775252d75fd6','2026-11-02',1,'H07',13,'Store 3, drawer 14, box 2','1971','1971',719528,719892,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO whereabouts VALUES(8,'30887233-a208-5281-9930-6d79ceb07ee3','2026-11-02',1,'H08',14,'Store 3, drawer 14, box 2','1958-05','1958-05',714900,714930,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO whereabouts VALUES(9,'ddc7a083-2db3-516f-afdf-bf9b59fb4af4','2026-11-02',1,'H09',25,'Store 3, drawer 14, box 4','2012-06-19','2012-06-19',734673,734673,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO whereabouts VALUES(10,'746f0dd4-81a1-52d0-8837-09aba0e07647','2026-11-02',1,'H10',22,'Studio 2, shelf B','2012-06-19','2012-06-19',734673,734673,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO whereabouts VALUES(11,'9f96b618-a2cf-58da-bde4-9e110e5c15ba','2026-11-02',4,'H1',NULL,'Slate quarry, crate 14','1941','1941',708571,708935,0,'edtf','1946-09','1946-09',710640,710669,0,'edtf',28,NULL);
INSERT INTO whereabouts VALUES(12,'e1e61e77-c704-5b86-9551-0839a74ee06b','2026-11-02',4,'H2',NULL,'Store 1, cabinet 6','2003-10','2003-10',731489,731519,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL);
INSERT INTO whereabouts VALUES(13,'ae0098e7-0b90-55ec-92f8-618fea57a6bb','2026-11-02',4,'H3',49,'Store 1, cabinet 6, box a','2003-09','2003-09',731459,731488,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',35,NULL);
INSERT INTO whereabouts VALUES(14,'e0c89bb9-a921-5c2e-85d4-bdb7775832be','2026-11-02',6,'H1',NULL,'Rope walk, yard','1907','1907',696152,696516,0,'edtf','1926','1926',703092,703456,0,'edtf',38,NULL);
INSERT INTO whereabouts VALUES(15,'f30c8666-2298-5324-88e8-05d0acb4d763','2026-11-02',6,'H2',NULL,'Stair hall','1926','1926',703092,703456,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',26,NULL);
INSERT INTO whereabouts VALUES(16,'be76a1dc-2c71-5d40-9033-90e7b612756b','2026-11-02',8,'H1',NULL,'Gallery 1','2021-11','2021-11',738095,738124,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',41,NULL);
INSERT INTO whereabouts VALUES(17,'aa853ec2-51d1-5c42-82ee-73f3be4ebfc6','2026-11-02',8,'H2',83,'Store 2, drawer 3','2021-05-20','2021-05-20',737930,737930,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',41,NULL);
INSERT INTO whereabouts VALUES(18,'d395b966-ba30-5564-8da1-290dc415b115','2026-11-02',9,'H1',87,'Store 1, rack 9, box c','2018-07','2018-07',736876,736906,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',40,NULL);
INSERT INTO whereabouts VALUES(19,'a76f4249-a095-5576-8cfc-44f12c77a836','2026-11-02',10,'H1',NULL,'Store 2, cabinet 2','1998-05','1998-05',729510,729540,0,'edtf','2026-05','2026-05',739737,739767,0,'edtf',34,NULL);
INSERT INTO whereabouts VALUES(20,'ba7ca421-f8f9-5309-aca9-80db4ebac340','2026-11-02',10,'H2',NULL,'Studio 1','2026-05','2026-05',739737,739767,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',43,NULL);
INSERT INTO whereabouts VALUES(21,'b6ee688c-eafe-5c6f-af2f-748ed9fd58b8','2026-11-02',10,'H3',95,'Studio 1, vial 7','1998-05','1998-05',729510,729540,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',34,NULL);
INSERT INTO whereabouts VALUES(22,'52a1eedc-c209-5dfc-9904-9c5110232e58','2026-11-02',12,'H1',NULL,'Seamen''s chapel, north wall','1802','1802',657802,658166,0,'edtf','1905','1905',695422,695786,0,'edtf',NULL,NULL);
INSERT INTO whereabouts VALUES(23,'f5a2987d-45cd-5001-96b0-de4c63c937c1','2026-11-02',12,'H2',NULL,'Chapel store','1905','1905',695422,695786,0,'edtf','1945~','1945~',710032,710396,2,'edtf',31,NULL);
INSERT INTO whereabouts VALUES(24,'679d3d92-0903-5645-ac67-e1fdf7b7d092','2026-11-02',12,'H3',NULL,'Store 3, bay 5','1985-06','1985-06',724793,724822,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL);
INSERT INTO whereabouts VALUES(25,'cda03b54-c7c0-504f-a8ee-0cb320a548a7','2026-11-02',2,'H1',NULL,'Gallery 4, case 2','1996-12','1996-12',728994,729024,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',33,NULL);
INSERT INTO whereabouts VALUES(26,'9f65309d-0ac3-5b4a-9f9e-e72824fac35f','2026-11-02',2,'H2',137,'Store 1, cabinet 2, box d','1996-12','1996-12',728994,729024,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',33,NULL);
INSERT INTO whereabouts VALUES(27,'bdec16e7-b7a0-5409-b1fe-b0e79655909d','2026-11-02',2,'H3',141,'Store 1, cabinet 2, box d','1952-09','1952-09',712832,712861,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',28,NULL);
CREATE TABLE agent_place (
	object_id INTEGER NOT NULL, 
	agent_id INTEGER NOT NULL, 
	place_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_agent_place PRIMARY KEY (agent_id, place_id), 
	CONSTRAINT fk_agent_place_object_id_agent_id FOREIGN KEY(object_id, agent_id) REFERENCES agent (object_id, id), 
	CONSTRAINT fk_agent_place_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id)
)
 STRICT

;
INSERT INTO agent_place VALUES(1,1,56,0);
INSERT INTO agent_place VALUES(1,1,58,1);
INSERT INTO agent_place VALUES(1,1,59,2);
INSERT INTO agent_place VALUES(1,1,60,3);
INSERT INTO agent_place VALUES(1,1,61,4);
INSERT INTO agent_place VALUES(1,2,55,0);
INSERT INTO agent_place VALUES(1,2,57,1);
INSERT INTO agent_place VALUES(1,3,55,0);
INSERT INTO agent_place VALUES(1,3,57,1);
INSERT INTO agent_place VALUES(1,4,58,0);
INSERT INTO agent_place VALUES(1,5,17,0);
INSERT INTO agent_place VALUES(1,6,10,0);
INSERT INTO agent_place VALUES(1,7,16,0);
INSERT INTO agent_place VALUES(1,8,17,0);
INSERT INTO agent_place VALUES(1,9,17,0);
INSERT INTO agent_place VALUES(1,10,16,0);
INSERT INTO agent_place VALUES(1,10,17,1);
INSERT INTO agent_place VALUES(1,11,62,0);
INSERT INTO agent_place VALUES(1,11,63,1);
INSERT INTO agent_place VALUES(1,11,64,2);
INSERT INTO agent_place VALUES(1,11,65,3);
INSERT INTO agent_place VALUES(1,12,62,0);
INSERT INTO agent_place VALUES(1,12,63,1);
INSERT INTO agent_place VALUES(1,12,65,2);
INSERT INTO agent_place VALUES(1,13,64,0);
INSERT INTO agent_place VALUES(3,14,81,0);
INSERT INTO agent_place VALUES(3,15,81,0);
INSERT INTO agent_place VALUES(4,16,83,0);
INSERT INTO agent_place VALUES(4,16,84,1);
INSERT INTO agent_place VALUES(4,17,83,0);
INSERT INTO agent_place VALUES(5,18,97,0);
INSERT INTO agent_place VALUES(5,18,98,1);
INSERT INTO agent_place VALUES(5,18,99,2);
INSERT INTO agent_place VALUES(5,20,96,0);
INSERT INTO agent_place VALUES(5,20,97,1);
INSERT INTO agent_place VALUES(6,21,108,0);
INSERT INTO agent_place VALUES(7,22,116,0);
INSERT INTO agent_place VALUES(7,22,117,1);
INSERT INTO agent_place VALUES(7,23,116,0);
INSERT INTO agent_place VALUES(7,23,117,1);
INSERT INTO agent_place VALUES(7,24,116,0);
INSERT INTO agent_place VALUES(7,24,117,1);
INSERT INTO agent_place VALUES(8,25,118,0);
INSERT INTO agent_place VALUES(9,26,130,0);
INSERT INTO agent_place VALUES(10,27,133,0);
INSERT INTO agent_place VALUES(10,27,134,1);
INSERT INTO agent_place VALUES(10,27,135,2);
INSERT INTO agent_place VALUES(10,28,133,0);
INSERT INTO agent_place VALUES(10,28,134,1);
INSERT INTO agent_place VALUES(12,29,157,0);
INSERT INTO agent_place VALUES(12,29,158,1);
INSERT INTO agent_place VALUES(13,30,166,0);
INSERT INTO agent_place VALUES(13,31,166,0);
INSERT INTO agent_place VALUES(2,32,175,0);
INSERT INTO agent_place VALUES(2,32,176,1);
INSERT INTO agent_place VALUES(2,32,177,2);
INSERT INTO agent_place VALUES(2,32,178,3);
INSERT INTO agent_place VALUES(2,32,179,4);
INSERT INTO agent_place VALUES(2,32,180,5);
INSERT INTO agent_place VALUES(2,33,191,0);
INSERT INTO agent_place VALUES(2,33,192,1);
INSERT INTO agent_place VALUES(2,34,175,0);
INSERT INTO agent_place VALUES(2,34,176,1);
INSERT INTO agent_place VALUES(2,34,177,2);
INSERT INTO agent_place VALUES(2,34,178,3);
INSERT INTO agent_place VALUES(2,35,175,0);
INSERT INTO agent_place VALUES(2,35,176,1);
INSERT INTO agent_place VALUES(2,35,177,2);
INSERT INTO agent_place VALUES(2,35,178,3);
CREATE TABLE bridge (
	object_id INTEGER NOT NULL, 
	component_id INTEGER NOT NULL, 
	place_id INTEGER NOT NULL, 
	CONSTRAINT pk_bridge PRIMARY KEY (component_id, place_id), 
	CONSTRAINT fk_bridge_object_id_component_id FOREIGN KEY(object_id, component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_bridge_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id)
)
 STRICT

;
INSERT INTO bridge VALUES(1,26,4);
INSERT INTO bridge VALUES(1,27,6);
INSERT INTO bridge VALUES(1,28,14);
INSERT INTO bridge VALUES(1,29,11);
INSERT INTO bridge VALUES(1,30,6);
INSERT INTO bridge VALUES(1,31,7);
INSERT INTO bridge VALUES(1,32,16);
INSERT INTO bridge VALUES(1,33,13);
INSERT INTO bridge VALUES(1,34,17);
INSERT INTO bridge VALUES(1,35,18);
INSERT INTO bridge VALUES(1,36,14);
INSERT INTO bridge VALUES(1,37,14);
INSERT INTO bridge VALUES(4,50,84);
INSERT INTO bridge VALUES(6,66,103);
INSERT INTO bridge VALUES(6,67,100);
INSERT INTO bridge VALUES(12,110,151);
INSERT INTO bridge VALUES(12,111,148);
INSERT INTO bridge VALUES(13,115,159);
INSERT INTO bridge VALUES(13,116,159);
INSERT INTO bridge VALUES(2,141,173);
CREATE TABLE intervention_place (
	object_id INTEGER NOT NULL, 
	intervention_id INTEGER NOT NULL, 
	place_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_intervention_place PRIMARY KEY (intervention_id, place_id), 
	CONSTRAINT fk_intervention_place_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id), 
	CONSTRAINT fk_intervention_place_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id)
)
 STRICT

;
INSERT INTO intervention_place VALUES(1,1,1,0);
INSERT INTO intervention_place VALUES(1,1,2,1);
INSERT INTO intervention_place VALUES(1,1,3,2);
INSERT INTO intervention_place VALUES(1,1,5,3);
INSERT INTO intervention_place VALUES(1,1,6,4);
INSERT INTO intervention_place VALUES(1,1,7,5);
INSERT INTO intervention_place VALUES(1,1,8,6);
INSERT INTO intervention_place VALUES(1,1,9,7);
INSERT INTO intervention_place VALUES(1,1,10,8);
INSERT INTO intervention_place VALUES(1,1,11,9);
INSERT INTO intervention_place VALUES(1,1,12,10);
INSERT INTO intervention_place VALUES(1,1,13,11);
INSERT INTO intervention_place VALUES(1,1,14,12);
INSERT INTO intervention_place VALUES(1,1,16,13);
INSERT INTO intervention_place VALUES(1,1,17,14);
INSERT INTO intervention_place VALUES(1,1,18,15);
INSERT INTO intervention_place VALUES(1,1,20,16);
INSERT INTO intervention_place VALUES(1,1,31,17);
INSERT INTO intervention_place VALUES(1,1,32,18);
INSERT INTO intervention_place VALUES(1,1,33,19);
INSERT INTO intervention_place VALUES(1,1,34,20);
INSERT INTO intervention_place VALUES(1,1,35,21);
INSERT INTO intervention_place VALUES(1,1,36,22);
INSERT INTO intervention_place VALUES(1,2,4,0);
INSERT INTO intervention_place VALUES(1,2,22,1);
INSERT INTO intervention_place VALUES(1,2,23,2);
INSERT INTO intervention_place VALUES(1,2,25,3);
INSERT INTO intervention_place VALUES(1,2,30,4);
INSERT INTO intervention_place VALUES(1,3,26,0);
INSERT INTO intervention_place VALUES(1,3,27,1);
INSERT INTO intervention_place VALUES(1,3,28,2);
INSERT INTO intervention_place VALUES(1,3,29,3);
INSERT INTO intervention_place VALUES(1,4,61,0);
INSERT INTO intervention_place VALUES(1,4,62,1);
INSERT INTO intervention_place VALUES(1,4,63,2);
INSERT INTO intervention_place VALUES(1,4,65,3);
INSERT INTO intervention_place VALUES(1,5,1,0);
INSERT INTO intervention_place VALUES(1,5,2,1);
INSERT INTO intervention_place VALUES(1,5,3,2);
INSERT INTO intervention_place VALUES(1,5,4,3);
INSERT INTO intervention_place VALUES(1,5,7,4);
INSERT INTO intervention_place VALUES(1,5,10,5);
INSERT INTO intervention_place VALUES(1,5,11,6);
INSERT INTO intervention_place VALUES(1,5,12,7);
INSERT INTO intervention_place VALUES(1,5,13,8);
INSERT INTO intervention_place VALUES(1,5,16,9);
INSERT INTO intervention_place VALUES(1,5,17,10);
INSERT INTO intervention_place VALUES(1,5,18,11);
INSERT INTO intervention_place VALUES(1,5,20,12);
INSERT INTO intervention_place VALUES(1,5,22,13);
INSERT INTO intervention_place VALUES(1,5,23,14);
INSERT INTO intervention_place VALUES(1,5,31,15);
INSERT INTO intervention_place VALUES(1,5,32,16);
INSERT INTO intervention_place VALUES(1,6,1,0);
INSERT INTO intervention_place VALUES(1,6,2,1);
INSERT INTO intervention_place VALUES(1,6,3,2);
INSERT INTO intervention_place VALUES(1,6,4,3);
INSERT INTO intervention_place VALUES(1,6,7,4);
INSERT INTO intervention_place VALUES(1,6,10,5);
INSERT INTO intervention_place VALUES(1,6,11,6);
INSERT INTO intervention_place VALUES(1,6,12,7);
INSERT INTO intervention_place VALUES(1,6,13,8);
INSERT INTO intervention_place VALUES(1,6,16,9);
INSERT INTO intervention_place VALUES(1,6,17,10);
INSERT INTO intervention_place VALUES(1,6,18,11);
INSERT INTO intervention_place VALUES(1,6,20,12);
INSERT INTO intervention_place VALUES(1,6,21,13);
INSERT INTO intervention_place VALUES(1,6,31,14);
INSERT INTO intervention_place VALUES(1,6,32,15);
INSERT INTO intervention_place VALUES(1,6,22,16);
INSERT INTO intervention_place VALUES(1,6,23,17);
INSERT INTO intervention_place VALUES(1,7,11,0);
INSERT INTO intervention_place VALUES(1,7,37,1);
INSERT INTO intervention_place VALUES(1,7,38,2);
INSERT INTO intervention_place VALUES(1,8,14,0);
INSERT INTO intervention_place VALUES(1,8,15,1);
INSERT INTO intervention_place VALUES(1,8,19,2);
INSERT INTO intervention_place VALUES(1,8,70,3);
INSERT INTO intervention_place VALUES(1,9,21,0);
INSERT INTO intervention_place VALUES(1,9,24,1);
INSERT INTO intervention_place VALUES(1,9,64,2);
INSERT INTO intervention_place VALUES(1,9,66,3);
INSERT INTO intervention_place VALUES(1,10,56,0);
INSERT INTO intervention_place VALUES(1,10,59,1);
INSERT INTO intervention_place VALUES(1,10,60,2);
INSERT INTO intervention_place VALUES(1,10,66,3);
INSERT INTO intervention_place VALUES(1,11,56,0);
INSERT INTO intervention_place VALUES(1,11,58,1);
INSERT INTO intervention_place VALUES(1,11,59,2);
INSERT INTO intervention_place VALUES(1,11,60,3);
INSERT INTO intervention_place VALUES(1,11,61,4);
INSERT INTO intervention_place VALUES(1,11,67,5);
INSERT INTO intervention_place VALUES(1,12,55,0);
INSERT INTO intervention_place VALUES(1,12,57,1);
INSERT INTO intervention_place VALUES(1,13,14,0);
INSERT INTO intervention_place VALUES(1,14,4,0);
INSERT INTO intervention_place VALUES(1,14,5,1);
INSERT INTO intervention_place VALUES(1,14,6,2);
INSERT INTO intervention_place VALUES(1,14,7,3);
INSERT INTO intervention_place VALUES(1,14,8,4);
INSERT INTO intervention_place VALUES(1,14,9,5);
INSERT INTO intervention_place VALUES(1,14,11,6);
INSERT INTO intervention_place VALUES(1,14,12,7);
INSERT INTO intervention_place VALUES(1,14,13,8);
INSERT INTO intervention_place VALUES(1,14,14,9);
INSERT INTO intervention_place VALUES(1,14,16,10);
INSERT INTO intervention_place VALUES(1,14,17,11);
INSERT INTO intervention_place VALUES(1,14,18,12);
INSERT INTO intervention_place VALUES(1,14,21,13);
INSERT INTO intervention_place VALUES(1,14,22,14);
INSERT INTO intervention_place VALUES(1,14,23,15);
INSERT INTO intervention_place VALUES(1,14,24,16);
INSERT INTO intervention_place VALUES(1,14,25,17);
INSERT INTO intervention_place VALUES(1,15,15,0);
INSERT INTO intervention_place VALUES(1,15,56,1);
INSERT INTO intervention_place VALUES(1,15,59,2);
INSERT INTO intervention_place VALUES(1,15,61,3);
INSERT INTO intervention_place VALUES(1,16,62,0);
INSERT INTO intervention_place VALUES(1,16,63,1);
INSERT INTO intervention_place VALUES(1,16,64,2);
INSERT INTO intervention_place VALUES(1,16,65,3);
INSERT INTO intervention_place VALUES(1,17,55,0);
INSERT INTO intervention_place VALUES(1,17,57,1);
INSERT INTO intervention_place VALUES(1,17,4,2);
INSERT INTO intervention_place VALUES(1,18,15,0);
INSERT INTO intervention_place VALUES(1,19,1,0);
INSERT INTO intervention_place VALUES(1,19,2,1);
INSERT INTO intervention_place VALUES(1,19,3,2);
INSERT INTO intervention_place VALUES(1,19,10,3);
INSERT INTO intervention_place VALUES(1,19,11,4);
INSERT INTO intervention_place VALUES(1,19,12,5);
INSERT INTO intervention_place VALUES(1,19,38,6);
INSERT INTO intervention_place VALUES(1,20,1,0);
INSERT INTO intervention_place VALUES(1,20,2,1);
INSERT INTO intervention_place VALUES(1,20,3,2);
INSERT INTO intervention_place VALUES(1,20,4,3);
INSERT INTO intervention_place VALUES(1,20,10,4);
INSERT INTO intervention_place VALUES(1,20,11,5);
INSERT INTO intervention_place VALUES(1,20,12,6);
INSERT INTO intervention_place VALUES(1,20,38,7);
INSERT INTO intervention_place VALUES(1,21,73,0);
INSERT INTO intervention_place VALUES(1,22,6,0);
INSERT INTO intervention_place VALUES(1,22,7,1);
INSERT INTO intervention_place VALUES(1,22,33,2);
INSERT INTO intervention_place VALUES(1,23,6,0);
INSERT INTO intervention_place VALUES(1,23,7,1);
INSERT INTO intervention_place VALUES(1,23,39,2);
INSERT INTO intervention_place VALUES(1,23,40,3);
INSERT INTO intervention_place VALUES(1,23,41,4);
INSERT INTO intervention_place VALUES(1,23,42,5);
INSERT INTO intervention_place VALUES(1,24,6,0);
INSERT INTO intervention_place VALUES(1,24,7,1);
INSERT INTO intervention_place VALUES(1,24,33,2);
INSERT INTO intervention_place VALUES(1,24,56,3);
INSERT INTO intervention_place VALUES(1,25,19,0);
INSERT INTO intervention_place VALUES(1,26,56,0);
INSERT INTO intervention_place VALUES(1,26,69,1);
INSERT INTO intervention_place VALUES(1,27,55,0);
INSERT INTO intervention_place VALUES(1,27,57,1);
INSERT INTO intervention_place VALUES(1,27,4,2);
INSERT INTO intervention_place VALUES(1,28,58,0);
INSERT INTO intervention_place VALUES(1,28,67,1);
INSERT INTO intervention_place VALUES(1,29,6,0);
INSERT INTO intervention_place VALUES(1,29,14,1);
INSERT INTO intervention_place VALUES(1,29,16,2);
INSERT INTO intervention_place VALUES(1,29,17,3);
INSERT INTO intervention_place VALUES(1,29,18,4);
INSERT INTO intervention_place VALUES(1,29,19,5);
INSERT INTO intervention_place VALUES(1,30,13,0);
INSERT INTO intervention_place VALUES(1,30,16,1);
INSERT INTO intervention_place VALUES(1,30,17,2);
INSERT INTO intervention_place VALUES(1,30,18,3);
INSERT INTO intervention_place VALUES(1,31,13,0);
INSERT INTO intervention_place VALUES(1,31,16,1);
INSERT INTO intervention_place VALUES(1,31,17,2);
INSERT INTO intervention_place VALUES(1,31,18,3);
INSERT INTO intervention_place VALUES(1,32,13,0);
INSERT INTO intervention_place VALUES(1,32,16,1);
INSERT INTO intervention_place VALUES(1,32,17,2);
INSERT INTO intervention_place VALUES(1,32,18,3);
INSERT INTO intervention_place VALUES(1,32,68,4);
INSERT INTO intervention_place VALUES(1,32,71,5);
INSERT INTO intervention_place VALUES(1,33,13,0);
INSERT INTO intervention_place VALUES(1,33,16,1);
INSERT INTO intervention_place VALUES(1,33,17,2);
INSERT INTO intervention_place VALUES(1,33,18,3);
INSERT INTO intervention_place VALUES(1,33,43,4);
INSERT INTO intervention_place VALUES(1,33,44,5);
INSERT INTO intervention_place VALUES(1,33,45,6);
INSERT INTO intervention_place VALUES(1,33,46,7);
INSERT INTO intervention_place VALUES(1,33,47,8);
INSERT INTO intervention_place VALUES(1,33,48,9);
INSERT INTO intervention_place VALUES(1,33,49,10);
INSERT INTO intervention_place VALUES(1,33,50,11);
INSERT INTO intervention_place VALUES(1,34,14,0);
INSERT INTO intervention_place VALUES(1,35,56,0);
INSERT INTO intervention_place VALUES(1,35,59,1);
INSERT INTO intervention_place VALUES(1,35,61,2);
INSERT INTO intervention_place VALUES(1,36,62,0);
INSERT INTO intervention_place VALUES(1,36,63,1);
INSERT INTO intervention_place VALUES(1,36,64,2);
INSERT INTO intervention_place VALUES(1,36,65,3);
INSERT INTO intervention_place VALUES(1,37,6,0);
INSERT INTO intervention_place VALUES(1,37,7,1);
INSERT INTO intervention_place VALUES(1,37,14,2);
INSERT INTO intervention_place VALUES(1,37,26,3);
INSERT INTO intervention_place VALUES(1,38,10,0);
INSERT INTO intervention_place VALUES(1,38,73,1);
INSERT INTO intervention_place VALUES(1,39,69,0);
INSERT INTO intervention_place VALUES(1,39,56,1);
INSERT INTO intervention_place VALUES(1,40,16,0);
INSERT INTO intervention_place VALUES(1,40,43,1);
INSERT INTO intervention_place VALUES(1,40,44,2);
INSERT INTO intervention_place VALUES(1,41,17,0);
INSERT INTO intervention_place VALUES(1,41,47,1);
INSERT INTO intervention_place VALUES(1,42,10,0);
INSERT INTO intervention_place VALUES(1,42,16,1);
INSERT INTO intervention_place VALUES(1,42,17,2);
INSERT INTO intervention_place VALUES(1,42,44,3);
INSERT INTO intervention_place VALUES(1,42,47,4);
INSERT INTO intervention_place VALUES(1,43,16,0);
INSERT INTO intervention_place VALUES(1,43,17,1);
INSERT INTO intervention_place VALUES(1,44,16,0);
INSERT INTO intervention_place VALUES(1,44,17,1);
INSERT INTO intervention_place VALUES(1,44,43,2);
INSERT INTO intervention_place VALUES(1,44,44,3);
INSERT INTO intervention_place VALUES(1,44,47,4);
INSERT INTO intervention_place VALUES(1,44,48,5);
INSERT INTO intervention_place VALUES(1,45,6,0);
INSERT INTO intervention_place VALUES(1,45,9,1);
INSERT INTO intervention_place VALUES(1,45,14,2);
INSERT INTO intervention_place VALUES(1,45,16,3);
INSERT INTO intervention_place VALUES(1,45,17,4);
INSERT INTO intervention_place VALUES(1,46,62,0);
INSERT INTO intervention_place VALUES(1,46,63,1);
INSERT INTO intervention_place VALUES(1,46,64,2);
INSERT INTO intervention_place VALUES(1,46,65,3);
INSERT INTO intervention_place VALUES(1,47,62,0);
INSERT INTO intervention_place VALUES(1,47,63,1);
INSERT INTO intervention_place VALUES(1,47,64,2);
INSERT INTO intervention_place VALUES(1,47,65,3);
INSERT INTO intervention_place VALUES(1,48,25,0);
INSERT INTO intervention_place VALUES(1,48,28,1);
INSERT INTO intervention_place VALUES(1,48,29,2);
INSERT INTO intervention_place VALUES(1,49,14,0);
INSERT INTO intervention_place VALUES(1,50,4,0);
INSERT INTO intervention_place VALUES(1,50,14,1);
INSERT INTO intervention_place VALUES(1,50,18,2);
INSERT INTO intervention_place VALUES(1,50,55,3);
INSERT INTO intervention_place VALUES(1,50,57,4);
INSERT INTO intervention_place VALUES(1,50,58,5);
INSERT INTO intervention_place VALUES(1,51,61,0);
INSERT INTO intervention_place VALUES(3,52,76,0);
INSERT INTO intervention_place VALUES(3,52,77,1);
INSERT INTO intervention_place VALUES(3,52,78,2);
INSERT INTO intervention_place VALUES(3,52,79,3);
INSERT INTO intervention_place VALUES(3,53,80,0);
INSERT INTO intervention_place VALUES(3,53,81,1);
INSERT INTO intervention_place VALUES(3,54,79,0);
INSERT INTO intervention_place VALUES(3,55,81,0);
INSERT INTO intervention_place VALUES(3,55,82,1);
INSERT INTO intervention_place VALUES(3,56,77,0);
INSERT INTO intervention_place VALUES(3,57,81,0);
INSERT INTO intervention_place VALUES(3,58,80,0);
INSERT INTO intervention_place VALUES(3,59,80,0);
INSERT INTO intervention_place VALUES(3,59,81,1);
INSERT INTO intervention_place VALUES(3,60,76,0);
INSERT INTO intervention_place VALUES(3,60,77,1);
INSERT INTO intervention_place VALUES(4,61,83,0);
INSERT INTO intervention_place VALUES(4,61,84,1);
INSERT INTO intervention_place VALUES(4,62,83,0);
INSERT INTO intervention_place VALUES(4,62,84,1);
INSERT INTO intervention_place VALUES(4,63,83,0);
INSERT INTO intervention_place VALUES(4,63,84,1);
INSERT INTO intervention_place VALUES(4,63,87,2);
INSERT INTO intervention_place VALUES(4,63,88,3);
INSERT INTO intervention_place VALUES(4,63,89,4);
INSERT INTO intervention_place VALUES(4,64,87,0);
INSERT INTO intervention_place VALUES(4,65,83,0);
INSERT INTO intervention_place VALUES(4,66,86,0);
INSERT INTO intervention_place VALUES(4,67,90,0);
INSERT INTO intervention_place VALUES(5,68,91,0);
INSERT INTO intervention_place VALUES(5,68,92,1);
INSERT INTO intervention_place VALUES(5,69,94,0);
INSERT INTO intervention_place VALUES(5,70,95,0);
INSERT INTO intervention_place VALUES(5,71,96,0);
INSERT INTO intervention_place VALUES(5,71,97,1);
INSERT INTO intervention_place VALUES(5,72,97,0);
INSERT INTO intervention_place VALUES(5,72,98,1);
INSERT INTO intervention_place VALUES(5,72,99,2);
INSERT INTO intervention_place VALUES(5,73,96,0);
INSERT INTO intervention_place VALUES(5,73,97,1);
INSERT INTO intervention_place VALUES(5,74,97,0);
INSERT INTO intervention_place VALUES(5,75,98,0);
INSERT INTO intervention_place VALUES(5,77,91,0);
INSERT INTO intervention_place VALUES(5,77,93,1);
INSERT INTO intervention_place VALUES(5,77,96,2);
INSERT INTO intervention_place VALUES(5,77,97,3);
INSERT INTO intervention_place VALUES(5,77,98,4);
INSERT INTO intervention_place VALUES(5,77,99,5);
INSERT INTO intervention_place VALUES(5,78,96,0);
INSERT INTO intervention_place VALUES(5,78,97,1);
INSERT INTO intervention_place VALUES(6,79,108,0);
INSERT INTO intervention_place VALUES(6,79,109,1);
INSERT INTO intervention_place VALUES(6,80,108,0);
INSERT INTO intervention_place VALUES(6,80,109,1);
INSERT INTO intervention_place VALUES(6,81,109,0);
INSERT INTO intervention_place VALUES(6,82,100,0);
INSERT INTO intervention_place VALUES(6,82,102,1);
INSERT INTO intervention_place VALUES(6,83,108,0);
INSERT INTO intervention_place VALUES(6,83,109,1);
INSERT INTO intervention_place VALUES(6,84,111,0);
INSERT INTO intervention_place VALUES(6,84,110,1);
INSERT INTO intervention_place VALUES(6,85,110,0);
INSERT INTO intervention_place VALUES(6,86,108,0);
INSERT INTO intervention_place VALUES(6,87,100,0);
INSERT INTO intervention_place VALUES(6,87,103,1);
INSERT INTO intervention_place VALUES(6,87,108,2);
INSERT INTO intervention_place VALUES(6,87,109,3);
INSERT INTO intervention_place VALUES(6,88,108,0);
INSERT INTO intervention_place VALUES(6,89,103,0);
INSERT INTO intervention_place VALUES(6,90,100,0);
INSERT INTO intervention_place VALUES(7,91,112,0);
INSERT INTO intervention_place VALUES(7,91,114,1);
INSERT INTO intervention_place VALUES(7,91,115,2);
INSERT INTO intervention_place VALUES(7,92,113,0);
INSERT INTO intervention_place VALUES(7,93,116,0);
INSERT INTO intervention_place VALUES(7,93,117,1);
INSERT INTO intervention_place VALUES(7,94,116,0);
INSERT INTO intervention_place VALUES(7,94,117,1);
INSERT INTO intervention_place VALUES(7,95,115,0);
INSERT INTO intervention_place VALUES(7,96,116,0);
INSERT INTO intervention_place VALUES(7,96,117,1);
INSERT INTO intervention_place VALUES(7,97,116,0);
INSERT INTO intervention_place VALUES(7,97,117,1);
INSERT INTO intervention_place VALUES(7,98,116,0);
INSERT INTO intervention_place VALUES(7,98,117,1);
INSERT INTO intervention_place VALUES(7,99,116,0);
INSERT INTO intervention_place VALUES(7,99,117,1);
INSERT INTO intervention_place VALUES(7,100,116,0);
INSERT INTO intervention_place VALUES(7,100,117,1);
INSERT INTO intervention_place VALUES(8,101,118,0);
INSERT INTO intervention_place VALUES(8,101,119,1);
INSERT INTO intervention_place VALUES(8,101,121,2);
INSERT INTO intervention_place VALUES(8,101,122,3);
INSERT INTO intervention_place VALUES(8,102,123,0);
INSERT INTO intervention_place VALUES(8,103,120,0);
INSERT INTO intervention_place VALUES(8,104,123,0);
INSERT INTO intervention_place VALUES(8,105,118,0);
INSERT INTO intervention_place VALUES(8,105,119,1);
INSERT INTO intervention_place VALUES(8,105,121,2);
INSERT INTO intervention_place VALUES(8,106,118,0);
INSERT INTO intervention_place VALUES(8,107,118,0);
INSERT INTO intervention_place VALUES(8,108,123,0);
INSERT INTO intervention_place VALUES(9,110,130,0);
INSERT INTO intervention_place VALUES(9,111,125,0);
INSERT INTO intervention_place VALUES(9,111,129,1);
INSERT INTO intervention_place VALUES(9,112,126,0);
INSERT INTO intervention_place VALUES(9,113,130,0);
INSERT INTO intervention_place VALUES(9,114,127,0);
INSERT INTO intervention_place VALUES(9,115,130,0);
INSERT INTO intervention_place VALUES(9,116,130,0);
INSERT INTO intervention_place VALUES(9,117,129,0);
INSERT INTO intervention_place VALUES(9,118,132,0);
INSERT INTO intervention_place VALUES(9,118,129,1);
INSERT INTO intervention_place VALUES(9,119,125,0);
INSERT INTO intervention_place VALUES(10,120,133,0);
INSERT INTO intervention_place VALUES(10,120,134,1);
INSERT INTO intervention_place VALUES(10,120,135,2);
INSERT INTO intervention_place VALUES(10,120,137,3);
INSERT INTO intervention_place VALUES(10,121,133,0);
INSERT INTO intervention_place VALUES(10,121,134,1);
INSERT INTO intervention_place VALUES(10,121,135,2);
INSERT INTO intervention_place VALUES(10,122,133,0);
INSERT INTO intervention_place VALUES(10,122,134,1);
INSERT INTO intervention_place VALUES(10,122,135,2);
INSERT INTO intervention_place VALUES(10,123,137,0);
INSERT INTO intervention_place VALUES(10,124,133,0);
INSERT INTO intervention_place VALUES(10,124,134,1);
INSERT INTO intervention_place VALUES(10,125,133,0);
INSERT INTO intervention_place VALUES(10,125,134,1);
INSERT INTO intervention_place VALUES(10,126,136,0);
INSERT INTO intervention_place VALUES(10,127,133,0);
INSERT INTO intervention_place VALUES(10,127,134,1);
INSERT INTO intervention_place VALUES(10,127,135,2);
INSERT INTO intervention_place VALUES(10,127,137,3);
INSERT INTO intervention_place VALUES(11,128,140,0);
INSERT INTO intervention_place VALUES(11,128,141,1);
INSERT INTO intervention_place VALUES(11,128,145,2);
INSERT INTO intervention_place VALUES(11,129,146,0);
INSERT INTO intervention_place VALUES(11,130,142,0);
INSERT INTO intervention_place VALUES(11,130,144,1);
INSERT INTO intervention_place VALUES(11,131,143,0);
INSERT INTO intervention_place VALUES(11,132,143,0);
INSERT INTO intervention_place VALUES(11,133,143,0);
INSERT INTO intervention_place VALUES(11,134,146,0);
INSERT INTO intervention_place VALUES(11,134,147,1);
INSERT INTO intervention_place VALUES(11,135,141,0);
INSERT INTO intervention_place VALUES(11,135,143,1);
INSERT INTO intervention_place VALUES(11,135,146,2);
INSERT INTO intervention_place VALUES(12,136,148,0);
INSERT INTO intervention_place VALUES(12,136,149,1);
INSERT INTO intervention_place VALUES(12,137,151,0);
INSERT INTO intervention_place VALUES(12,137,153,1);
INSERT INTO intervention_place VALUES(12,137,154,2);
INSERT INTO intervention_place VALUES(12,138,150,0);
INSERT INTO intervention_place VALUES(12,139,148,0);
INSERT INTO intervention_place VALUES(12,140,148,0);
INSERT INTO intervention_place VALUES(12,140,155,1);
INSERT INTO intervention_place VALUES(12,140,156,2);
INSERT INTO intervention_place VALUES(12,141,157,0);
INSERT INTO intervention_place VALUES(12,141,158,1);
INSERT INTO intervention_place VALUES(12,142,157,0);
INSERT INTO intervention_place VALUES(12,143,157,0);
INSERT INTO intervention_place VALUES(13,144,159,0);
INSERT INTO intervention_place VALUES(13,144,162,1);
INSERT INTO intervention_place VALUES(13,144,163,2);
INSERT INTO intervention_place VALUES(13,145,159,0);
INSERT INTO intervention_place VALUES(13,145,161,1);
INSERT INTO intervention_place VALUES(13,145,163,2);
INSERT INTO intervention_place VALUES(13,145,164,3);
INSERT INTO intervention_place VALUES(13,145,165,4);
INSERT INTO intervention_place VALUES(13,146,160,0);
INSERT INTO intervention_place VALUES(13,147,166,0);
INSERT INTO intervention_place VALUES(13,148,166,0);
INSERT INTO intervention_place VALUES(13,149,168,0);
INSERT INTO intervention_place VALUES(13,150,166,0);
INSERT INTO intervention_place VALUES(13,150,167,1);
INSERT INTO intervention_place VALUES(13,151,166,0);
INSERT INTO intervention_place VALUES(13,152,166,0);
INSERT INTO intervention_place VALUES(13,153,166,0);
INSERT INTO intervention_place VALUES(13,153,167,1);
INSERT INTO intervention_place VALUES(13,153,159,2);
INSERT INTO intervention_place VALUES(13,153,160,3);
INSERT INTO intervention_place VALUES(2,154,169,0);
INSERT INTO intervention_place VALUES(2,154,170,1);
INSERT INTO intervention_place VALUES(2,154,171,2);
INSERT INTO intervention_place VALUES(2,154,172,3);
INSERT INTO intervention_place VALUES(2,154,173,4);
INSERT INTO intervention_place VALUES(2,154,174,5);
INSERT INTO intervention_place VALUES(2,154,175,6);
INSERT INTO intervention_place VALUES(2,154,176,7);
INSERT INTO intervention_place VALUES(2,154,177,8);
INSERT INTO intervention_place VALUES(2,154,178,9);
INSERT INTO intervention_place VALUES(2,154,179,10);
INSERT INTO intervention_place VALUES(2,154,180,11);
INSERT INTO intervention_place VALUES(2,154,181,12);
INSERT INTO intervention_place VALUES(2,154,182,13);
INSERT INTO intervention_place VALUES(2,154,183,14);
INSERT INTO intervention_place VALUES(2,154,184,15);
INSERT INTO intervention_place VALUES(2,154,185,16);
INSERT INTO intervention_place VALUES(2,154,187,17);
INSERT INTO intervention_place VALUES(2,154,189,18);
INSERT INTO intervention_place VALUES(2,154,190,19);
INSERT INTO intervention_place VALUES(2,155,186,0);
INSERT INTO intervention_place VALUES(2,155,192,1);
INSERT INTO intervention_place VALUES(2,156,191,0);
INSERT INTO intervention_place VALUES(2,157,188,0);
INSERT INTO intervention_place VALUES(2,158,191,0);
INSERT INTO intervention_place VALUES(2,158,192,1);
INSERT INTO intervention_place VALUES(2,159,175,0);
INSERT INTO intervention_place VALUES(2,159,176,1);
INSERT INTO intervention_place VALUES(2,159,177,2);
INSERT INTO intervention_place VALUES(2,159,178,3);
INSERT INTO intervention_place VALUES(2,159,179,4);
INSERT INTO intervention_place VALUES(2,159,180,5);
INSERT INTO intervention_place VALUES(2,159,173,6);
INSERT INTO intervention_place VALUES(2,159,189,7);
INSERT INTO intervention_place VALUES(2,159,190,8);
INSERT INTO intervention_place VALUES(2,160,175,0);
INSERT INTO intervention_place VALUES(2,160,176,1);
INSERT INTO intervention_place VALUES(2,160,177,2);
INSERT INTO intervention_place VALUES(2,160,178,3);
INSERT INTO intervention_place VALUES(2,160,179,4);
INSERT INTO intervention_place VALUES(2,160,180,5);
INSERT INTO intervention_place VALUES(2,161,181,0);
INSERT INTO intervention_place VALUES(2,161,182,1);
INSERT INTO intervention_place VALUES(2,161,183,2);
INSERT INTO intervention_place VALUES(2,161,184,3);
INSERT INTO intervention_place VALUES(2,161,185,4);
INSERT INTO intervention_place VALUES(2,162,181,0);
INSERT INTO intervention_place VALUES(2,162,182,1);
INSERT INTO intervention_place VALUES(2,162,183,2);
INSERT INTO intervention_place VALUES(2,163,184,0);
INSERT INTO intervention_place VALUES(2,163,185,1);
INSERT INTO intervention_place VALUES(2,164,193,0);
INSERT INTO intervention_place VALUES(2,165,191,0);
INSERT INTO intervention_place VALUES(2,165,192,1);
INSERT INTO intervention_place VALUES(2,166,175,0);
INSERT INTO intervention_place VALUES(2,166,176,1);
INSERT INTO intervention_place VALUES(2,166,177,2);
INSERT INTO intervention_place VALUES(2,166,178,3);
INSERT INTO intervention_place VALUES(2,167,175,0);
INSERT INTO intervention_place VALUES(2,167,176,1);
INSERT INTO intervention_place VALUES(2,167,177,2);
INSERT INTO intervention_place VALUES(2,167,178,3);
INSERT INTO intervention_place VALUES(2,168,175,0);
INSERT INTO intervention_place VALUES(2,168,176,1);
INSERT INTO intervention_place VALUES(2,168,177,2);
INSERT INTO intervention_place VALUES(2,168,178,3);
INSERT INTO intervention_place VALUES(2,169,191,0);
INSERT INTO intervention_place VALUES(2,169,178,1);
INSERT INTO intervention_place VALUES(2,170,179,0);
INSERT INTO intervention_place VALUES(2,170,180,1);
INSERT INTO intervention_place VALUES(2,171,179,0);
INSERT INTO intervention_place VALUES(2,171,180,1);
INSERT INTO intervention_place VALUES(2,171,182,2);
INSERT INTO intervention_place VALUES(2,171,184,3);
INSERT INTO intervention_place VALUES(2,171,188,4);
CREATE TABLE joint_event (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	place_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	event TEXT, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	step INTEGER, 
	intervention_id INTEGER, 
	location TEXT, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_joint_event_event_known CHECK (event IN ('closed', 'moving', 'opened', 'failed')), 
	CONSTRAINT ck_joint_event_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT fk_joint_event_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id), 
	CONSTRAINT fk_joint_event_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id), 
	CONSTRAINT fk_joint_event_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_joint_event_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_joint_event_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_joint_event_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO joint_event VALUES(1,'42071a7b-178b-5aa7-a4c0-0a2b777d9cd4','2026-11-02',1,1,'E01a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(2,'4f6cf4cd-8a74-5e8c-92ab-0c4a4d787b0b','2026-11-02',1,1,'E01b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(3,'e1f899d1-9f48-59b3-89ff-8f767faf9216','2026-11-02',1,1,'E01c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(4,'d6701162-145b-51f1-be10-f59e90a0182b','2026-11-02',1,1,'E01d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(5,'b30dafee-18e6-50b8-9235-be089c1cf208','2026-11-02',1,1,'E01e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(6,'bdf85b99-479b-58be-bbfd-12fcd742727e','2026-11-02',1,2,'E02a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(7,'3b4fa851-05f9-517d-b115-8c9fce473e52','2026-11-02',1,2,'E02b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(8,'e6ea220a-8d57-52e8-a465-621f98c0ed9a','2026-11-02',1,2,'E02c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(9,'5250de83-a1c5-510c-a3be-8952e9c6707b','2026-11-02',1,2,'E02d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(10,'da895a78-1d78-5558-be44-6814ecbc319f','2026-11-02',1,2,'E02e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(11,'6cdf8a9b-74e5-5fff-9a9b-74adf9a8cea5','2026-11-02',1,3,'E03a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(12,'117bbfed-b873-5634-974c-53bec105947f','2026-11-02',1,3,'E03b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(13,'860d26a3-d757-58e3-90c5-2ef0e66168ee','2026-11-02',1,3,'E03c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(14,'a5a6c1a6-1ade-52fe-9c74-6d77ddca12b0','2026-11-02',1,3,'E03d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(15,'d6d16558-7c28-573d-90f0-7ff9bc3edff7','2026-11-02',1,3,'E03e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(16,'7ce023f3-7674-5c17-bc8c-f85514dfab82','2026-11-02',1,4,'E04a','closed','1741','1741',635523,635887,0,'edtf',NULL,2,NULL,2,NULL);
INSERT INTO joint_event VALUES(17,'e3872572-cfc2-5f75-8c2b-5a4d8733b0a1','2026-11-02',1,4,'E04b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(18,'532fc13b-07c9-594b-a1fa-605b78d09454','2026-11-02',1,4,'E04c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(19,'0f2b4ec7-f0bf-5456-9f94-775d38f28ac5','2026-11-02',1,4,'E04d','failed','between 1959 and 1976','1959/1976',715145,721719,0,'words',NULL,NULL,'lower third, at the outlet',13,'"Light shows through."');
INSERT INTO joint_event VALUES(20,'fccb76da-0271-5050-8d4b-fa694fd3d0bd','2026-11-02',1,5,'E05a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(21,'97d62e4e-c8e9-5c26-865d-76a2683f9514','2026-11-02',1,6,'E06a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(22,'d2edd453-0c54-59cb-b1ae-c21d18ebdecd','2026-11-02',1,6,'E06b','moving','between 1868 and 1931','1868/1931',681908,705282,0,'words',NULL,NULL,'crack on both sides of the cramp',7,NULL);
INSERT INTO joint_event VALUES(23,'23d55085-b925-5cef-bc8b-6710e9c02f15','2026-11-02',1,6,'E06c','closed','1934-06-14','1934-06-14',706178,706178,0,'edtf',NULL,14,'edge only',8,'Pointed over a rusting cramp.');
INSERT INTO joint_event VALUES(24,'28544a01-739a-53f9-8290-c03cc2e218df','2026-11-02',1,6,'E06d','opened','1967-03-13','1967-03-13',718138,718138,0,'edtf',NULL,22,NULL,12,NULL);
INSERT INTO joint_event VALUES(25,'056206b4-84f2-59e3-9150-daf084f0955c','2026-11-02',1,6,'E06e','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,'2 mm out of level, "near enough".');
INSERT INTO joint_event VALUES(26,'cc8891fd-3c2f-540f-a349-486b9bac067e','2026-11-02',1,6,'E06f','moving','1989-03-14','1989-03-14',726175,726175,0,'edtf',NULL,29,'upper edge, a feeler of 0.1 mm goes in',15,NULL);
INSERT INTO joint_event VALUES(27,'e1ce8a28-2e15-50ee-87a8-c880af5de70e','2026-11-02',1,6,'E06g','moving','2012-05','2012-05',734624,734654,0,'edtf',NULL,45,'upper edge',18,'Stopping fallen over 110 mm.');
INSERT INTO joint_event VALUES(28,'f6405eae-c926-59b1-8ad1-214d31018892','2026-11-02',1,7,'E07a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(29,'fbf0c296-1be9-59eb-a817-68e232be0020','2026-11-02',1,7,'E07b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(30,'f20909e3-619a-5a81-acfc-2e5a15cb1ffd','2026-11-02',1,7,'E07c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(31,'4edea9ff-461f-5099-88e8-a947bb6e56d9','2026-11-02',1,7,'E07d','opened','1967-03-13','1967-03-13',718138,718138,0,'edtf',NULL,22,NULL,12,NULL);
INSERT INTO joint_event VALUES(32,'35c12584-54c7-540b-a5c9-443e4326d558','2026-11-02',1,7,'E07e','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,NULL);
INSERT INTO joint_event VALUES(33,'21ab778e-a1b9-5b78-8b7a-8d56e3387bfd','2026-11-02',1,8,'E08a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(34,'dd7a813f-0cd5-5bfa-944d-4ddb0ab90697','2026-11-02',1,9,'E09a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(35,'9eb516f1-e930-513a-a6f2-38fe53ba3e8f','2026-11-02',1,10,'E10a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(36,'b3e273a3-fb04-5b24-9d16-af9fe94ac5be','2026-11-02',1,10,'E10b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(37,'c8f0cf3d-4998-5266-8051-c64194126f66','2026-11-02',1,10,'E10c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(38,'7d64adcf-0ae0-5985-9012-7d3228ae3e56','2026-11-02',1,10,'E10d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(39,'4e07c27f-cb73-5bc0-9241-4bd4b082ba3f','2026-11-02',1,10,'E10e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(40,'b822c956-7229-5e3c-942d-b16c4c89f680','2026-11-02',1,10,'E10f','opened','2011-09-26','2011-09-26',734406,734406,0,'edtf',NULL,38,NULL,18,'Not closed again: the slab hangs in the frame.');
INSERT INTO joint_event VALUES(41,'b79f6f9c-1ad7-585b-9c2f-71330d17e625','2026-11-02',1,11,'E11a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(42,'47a04af1-75b0-5c6b-ba89-aa9b6c5c98a7','2026-11-02',1,11,'E11b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(43,'ee9e5a27-6e0d-597d-ba1a-df42f953dbf2','2026-11-02',1,11,'E11c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(44,'4598b42f-f7e5-54cd-b55c-b269e5ea0fb5','2026-11-02',1,11,'E11d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(45,'418c9e1b-225b-5272-b761-6878efc5ec99','2026-11-02',1,11,'E11e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(46,'4b85ea8f-65e5-5bca-b726-4461d91799d6','2026-11-02',1,12,'E12a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(47,'52eb56f3-4d92-59c1-b0dc-c2a54acab604','2026-11-02',1,12,'E12b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(48,'f22ed05f-4a0c-5b39-9f58-be5eb7f743c9','2026-11-02',1,12,'E12c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(49,'16173e8e-4447-5308-8726-914fb60a77f0','2026-11-02',1,12,'E12d','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,NULL,11,NULL);
INSERT INTO joint_event VALUES(50,'58b926d5-4c94-5442-8afb-6b18bae07ea3','2026-11-02',1,12,'E12e','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(51,'b3c85de5-e508-563c-b77a-fb55c1c4d1d4','2026-11-02',1,13,'E13a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(52,'192c1436-044c-572b-8efe-05d39486b511','2026-11-02',1,13,'E13b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(53,'2bcedd34-e88d-523b-8486-52e88a512456','2026-11-02',1,13,'E13c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(54,'d501a45c-a1bb-5fb9-b260-0ce625de9021','2026-11-02',1,13,'E13d','opened','1989-05-02/1989-05-09','1989-05-02/1989-05-09',726224,726231,0,'edtf',NULL,30,NULL,15,NULL);
INSERT INTO joint_event VALUES(55,'5e916afd-8f63-52a6-afc7-48419dfcb970','2026-11-02',1,13,'E13e','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(56,'20e275d0-ee1d-5679-892d-fac124112efb','2026-11-02',1,14,'E14a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(57,'63429a7b-576f-50ea-b328-5abe22658e9b','2026-11-02',1,14,'E14b','opened','1868?','1868?',681908,682273,1,'edtf',1,5,NULL,3,'The letter says it never was.');
INSERT INTO joint_event VALUES(58,'a9caf4fd-4b4e-55bc-a6ce-930f50567a9f','2026-11-02',1,14,'E14c','closed','1868?','1868?',681908,682273,1,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(59,'4cbfe665-3452-57d9-8f51-ed82e88487c2','2026-11-02',1,14,'E14d','moving','May 1934','1934-05',706134,706164,0,'words',NULL,13,NULL,8,'"Shakes when the cart goes by."');
INSERT INTO joint_event VALUES(60,'bada7d4e-cf43-5466-8f90-91b8c8276976','2026-11-02',1,14,'E14e','closed','14 June 1934','1934-06-14',706178,706178,0,'words',NULL,14,'edge only',8,NULL);
INSERT INTO joint_event VALUES(61,'e20ca826-1e01-5eb0-8b89-6da5c8bb5de4','2026-11-02',1,14,'E14f','moving','1989-03-14','1989-03-14',726175,726175,0,'edtf',NULL,29,'rocks 0.4 mm, front to back',15,NULL);
INSERT INTO joint_event VALUES(62,'2ad8a188-3ddb-5048-8ca3-a0071b284fac','2026-11-02',1,14,'E14g','closed','1989-05-18','1989-05-18',726240,726240,0,'edtf',NULL,34,'front left, by injection',15,'"Firm." The back was not tried.');
INSERT INTO joint_event VALUES(63,'766ffc0a-906c-5aa1-98c8-610cfa08209a','2026-11-02',1,14,'E14h','moving','2019-06-12','2019-06-12',737222,737222,0,'edtf',NULL,49,'front edge, 0.1 mm on the gauge',20,NULL);
INSERT INTO joint_event VALUES(64,'54ba46b5-7ded-54e2-a776-6c2a2e0943b5','2026-11-02',1,14,'E14i','moving','2026-09-15','2026-09-15',739874,739874,0,'edtf',NULL,50,'front edge, 0.3 mm on the gauge',22,'0.2 mm more in seven years, most of it in 2022.');
INSERT INTO joint_event VALUES(65,'e3b476e6-2284-5717-9fa6-7502f95ffb9e','2026-11-02',1,15,'E15a','closed','before 1872','../1871',-9000000,683368,0,'words',NULL,8,NULL,4,'First mend.');
INSERT INTO joint_event VALUES(66,'262e4d1e-a301-5fcd-a1f1-2bba5ea391bc','2026-11-02',1,15,'E15b','failed','between 1872 and 1896','1872/1896',683369,692500,0,'words',NULL,NULL,NULL,5,'No fin in the plate.');
INSERT INTO joint_event VALUES(67,'0d01bd58-b237-562e-8b91-9306fe640c57','2026-11-02',1,15,'E15c','closed','1934-06/1934-07','1934-06/1934-07',706165,706225,0,'edtf',NULL,15,NULL,8,'Second mend, in cement.');
INSERT INTO joint_event VALUES(68,'529f1301-3342-54ab-8872-e2e3ec0c93db','2026-11-02',1,15,'E15d','failed','[1934-08..1947-07]','[1934-08..1947-07]',706226,710973,0,'edtf',NULL,NULL,NULL,9,'No fin in the print.');
INSERT INTO joint_event VALUES(69,'f15b6779-200b-5191-bec9-9ef38aafd1ad','2026-11-02',1,15,'E15e','closed','1947-08/1957-09','1947-08/1957-09',710974,714687,0,'edtf',NULL,18,NULL,10,'Third mend, by nobody.');
INSERT INTO joint_event VALUES(70,'9b84edde-a159-590d-9925-272de9b6ca7a','2026-11-02',1,15,'E15f','failed','1971','1971',719528,719892,0,'edtf',NULL,NULL,NULL,18,'Paper slip in the box: "fin off again, 1971".');
INSERT INTO joint_event VALUES(71,'f83290b6-a700-522c-b75d-aeb22e874d26','2026-11-02',1,16,'E16a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(72,'9d114db2-9aa5-5b83-a4c2-6d49cc13b2c1','2026-11-02',1,16,'E16b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(73,'59a3f53f-46a6-5cb8-8d44-15534c3fb6a2','2026-11-02',1,16,'E16c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(74,'e1c48d90-c145-5c52-a797-4b4f64704baa','2026-11-02',1,16,'E16d','opened','1989-05-02/1989-05-09','1989-05-02/1989-05-09',726224,726231,0,'edtf',NULL,30,NULL,15,NULL);
INSERT INTO joint_event VALUES(75,'b75ba272-f584-535a-9377-9ca6c1f1d758','2026-11-02',1,16,'E16e','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(76,'089eeffa-0d4d-532d-bd29-9eb279a8f0f1','2026-11-02',1,16,'E16f','opened','2012-02-14','2012-02-14',734547,734547,0,'edtf',NULL,40,NULL,18,'Released. Both faces whole.');
INSERT INTO joint_event VALUES(77,'6333f3c6-faa8-5c54-94d2-8572b0b9e442','2026-11-02',1,16,'E16g','closed','2012-04-24','2012-04-24',734617,734617,0,'edtf',NULL,44,NULL,18,NULL);
INSERT INTO joint_event VALUES(78,'9dc4a59f-a62b-51bd-914f-4944eaf1a3cc','2026-11-02',1,17,'E17a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(79,'0153fe40-3e7f-5a03-81b9-b29ee51fe5ee','2026-11-02',1,17,'E17b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(80,'bb6fd4f6-af6a-5852-b6d0-a95d73306738','2026-11-02',1,17,'E17c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(81,'5eea0178-b1b4-5341-9e51-dcd5bdf9e4b8','2026-11-02',1,17,'E17d','opened','1989-05-02/1989-05-09','1989-05-02/1989-05-09',726224,726231,0,'edtf',NULL,30,NULL,15,NULL);
INSERT INTO joint_event VALUES(82,'5317781c-bc27-541e-9ff8-3872be4bcad8','2026-11-02',1,17,'E17e','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(83,'ea03d5e8-1cf8-5b03-b0a9-cee278fcb64b','2026-11-02',1,17,'E17f','opened','2012-02-21','2012-02-21',734554,734554,0,'edtf',NULL,41,NULL,18,'Pulled stone from B09.');
INSERT INTO joint_event VALUES(84,'d3e391ca-b024-5434-93d0-4064af5a85f4','2026-11-02',1,17,'E17g','closed','2012-04-24','2012-04-24',734617,734617,0,'edtf',NULL,44,NULL,18,NULL);
INSERT INTO joint_event VALUES(85,'6d58d601-d6ea-54ef-b8c5-0fb6919d3ae7','2026-11-02',1,18,'E18a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(86,'450b6521-c710-5fa5-ace6-d11f73b54218','2026-11-02',1,18,'E18b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(87,'1718436d-e273-5d5d-9f8a-9bb6de19619d','2026-11-02',1,18,'E18c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(88,'b0064d73-4224-54d5-9f1a-e2adc9136b86','2026-11-02',1,18,'E18d','opened','1989-05-02/1989-05-09','1989-05-02/1989-05-09',726224,726231,0,'edtf',NULL,30,NULL,15,NULL);
INSERT INTO joint_event VALUES(89,'aa37c999-7a46-50af-86c8-44c765e45a7f','2026-11-02',1,18,'E18e','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(90,'3db6a35d-1e16-592b-a107-445e2c7277f9','2026-11-02',1,18,'E18f','moving','2026-09-16','2026-09-16',739875,739875,0,'edtf',NULL,50,'right front corner, hairline',22,'New since 2012: no light, but a sheet of tissue goes in.');
INSERT INTO joint_event VALUES(91,'3c8d3d22-e7d4-5816-a0ed-75c399f88fe1','2026-11-02',1,19,'E19a','closed','before 1872','../1871',-9000000,683368,0,'words',1,8,NULL,4,'"Dry, with lack."');
INSERT INTO joint_event VALUES(92,'2b71d33c-bd53-52ea-ae8e-9a004d92213b','2026-11-02',1,19,'E19b','opened','1967-03','1967-03',718126,718156,0,'edtf',1,25,NULL,12,'"Came off in the hand."');
INSERT INTO joint_event VALUES(93,'108422b4-63e4-5c10-8f3c-555fe5e25a88','2026-11-02',1,19,'E19c','closed','1967-03','1967-03',718126,718156,0,'edtf',2,25,NULL,12,NULL);
INSERT INTO joint_event VALUES(94,'c085479d-e2ba-5b39-9aa9-674adeef211c','2026-11-02',1,20,'E20a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(95,'0fe91c3f-32a8-5ba1-a812-973b12501e18','2026-11-02',1,20,'E20b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(96,'521f12ab-8276-5a9c-a257-221191b6cb55','2026-11-02',1,20,'E20c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(97,'fa6e7ee8-5ed5-558c-b9d0-0b4046ab5e68','2026-11-02',1,20,'E20d','failed','[1941..1944]','[1941..1944]',708571,710031,0,'edtf',NULL,NULL,NULL,9,'The urn was gone by 1947.');
INSERT INTO joint_event VALUES(98,'bca2dd0c-9984-5136-ab6d-25c2839dcf2d','2026-11-02',1,21,'E21a','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',NULL,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(99,'b97358d9-5212-5c6a-b447-7b44456341e6','2026-11-02',1,22,'E22a','closed','1741','1741',635523,635887,0,'edtf',NULL,2,NULL,2,NULL);
INSERT INTO joint_event VALUES(100,'c0af1996-88da-5b72-80d2-6462df2ab423','2026-11-02',1,22,'E22b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(101,'78ee8cbb-4937-598a-8065-708bf57e7701','2026-11-02',1,22,'E22c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,'"Masks put back in their own bed."');
INSERT INTO joint_event VALUES(102,'c5ffa3e0-f14c-518e-b79a-ec314ad43858','2026-11-02',1,23,'E23a','closed','1741','1741',635523,635887,0,'edtf',NULL,2,NULL,2,NULL);
INSERT INTO joint_event VALUES(103,'9bcbe711-4537-5e7c-a92b-22eacdbf09bf','2026-11-02',1,23,'E23b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(104,'e0757409-1390-575a-be70-8fa2ac1a3c45','2026-11-02',1,23,'E23c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,'"Masks put back in their own bed."');
INSERT INTO joint_event VALUES(105,'d93ae9f9-f6fc-5da8-bd85-645dc86bcef9','2026-11-02',1,24,'E24a','closed','1868?','1868?',681908,682273,1,'edtf',NULL,9,NULL,18,NULL);
INSERT INTO joint_event VALUES(106,'c4dbb12b-da21-5afc-b1b3-ea0d207d681b','2026-11-02',1,25,'E25a','closed','1741','1741',635523,635887,0,'edtf',NULL,2,NULL,2,NULL);
INSERT INTO joint_event VALUES(107,'8092407d-188c-5dc1-9fd1-4452bc367203','2026-11-02',1,25,'E25b','opened','2012-06-19','2012-06-19',734673,734673,0,'edtf',NULL,48,NULL,18,NULL);
INSERT INTO joint_event VALUES(108,'dbfbb12e-56a5-51ba-84cf-0784dbca88ee','2026-11-02',1,26,'E26a','closed','1741','1741',635523,635887,0,'edtf',NULL,3,NULL,2,NULL);
INSERT INTO joint_event VALUES(109,'40328677-3f09-56e6-87f8-83414452e102','2026-11-02',1,27,'E27a','closed','1741','1741',635523,635887,0,'edtf',NULL,3,NULL,2,NULL);
INSERT INTO joint_event VALUES(110,'7a622753-bc67-50e9-867f-3b824a2f0fd7','2026-11-02',1,28,'E28a','closed','1741','1741',635523,635887,0,'edtf',NULL,3,NULL,2,NULL);
INSERT INTO joint_event VALUES(111,'6de06218-73c7-56ca-83a8-c7f39b34b037','2026-11-02',1,28,'E28b','opened','2012-06-19','2012-06-19',734673,734673,0,'edtf',NULL,48,NULL,18,NULL);
INSERT INTO joint_event VALUES(112,'5d7a9aa3-4b8d-5d0c-9181-654e103ebcd0','2026-11-02',1,29,'E29a','closed','1741','1741',635523,635887,0,'edtf',NULL,3,NULL,2,NULL);
INSERT INTO joint_event VALUES(113,'821ef5dc-5994-5325-a11e-c36cafd9ef1e','2026-11-02',1,29,'E29b','opened','2012-06-19','2012-06-19',734673,734673,0,'edtf',NULL,48,NULL,18,NULL);
INSERT INTO joint_event VALUES(114,'ee0e67bc-7288-5683-8465-c2dea06ba56d','2026-11-02',1,30,'E30a','closed','1741','1741',635523,635887,0,'edtf',NULL,2,NULL,2,NULL);
INSERT INTO joint_event VALUES(115,'c49f8f9f-8132-5516-9c88-17c3dcfc02fe','2026-11-02',1,31,'E31a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(116,'afe3bc31-318b-5fc1-b41d-f19e6ef00df7','2026-11-02',1,31,'E31b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(117,'cd0688be-90e4-5bde-b4b6-4cf25819df29','2026-11-02',1,31,'E31c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(118,'4d86096b-9fdd-5a03-934f-4df2f8e9dd21','2026-11-02',1,32,'E32a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(119,'8a230f34-02fb-5ad7-ba71-f7acf3ac30a3','2026-11-02',1,32,'E32b','opened','summer 1868','1868-22',682060,682151,0,'words',1,5,NULL,3,NULL);
INSERT INTO joint_event VALUES(120,'03127abf-e7ca-5d0d-83c5-e2851377cbbe','2026-11-02',1,32,'E32c','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(121,'c03d53a0-525a-52f3-b261-e23944880302','2026-11-02',1,33,'E33a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(122,'339a0b81-b9cf-516f-aa2b-60a787803d52','2026-11-02',1,33,'E33b','opened','1967-03-13','1967-03-13',718138,718138,0,'edtf',NULL,22,NULL,12,'The left leg of K2 lifted out.');
INSERT INTO joint_event VALUES(123,'c67e09db-d01f-5bf6-a21a-e56a659a7508','2026-11-02',1,34,'E34a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(124,'bdade5c2-4ef4-5821-8a6b-2fe83964de9c','2026-11-02',1,35,'E35a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(125,'61a33b17-3803-595b-bf1c-66b6fec55f33','2026-11-02',1,36,'E36a','closed','1741','1741',635523,635887,0,'edtf',NULL,1,NULL,2,NULL);
INSERT INTO joint_event VALUES(126,'cab24aa1-e664-5f2b-96cb-f030c3b5edcf','2026-11-02',1,36,'E36b','opened','1868?','1868?',681908,682273,1,'edtf',1,5,NULL,3,'Only if the dolphin came off.');
INSERT INTO joint_event VALUES(127,'e85469f6-0640-517b-a3ec-73dddecc0d7d','2026-11-02',1,36,'E36c','closed','1868?','1868?',681908,682273,1,'edtf',2,6,NULL,3,NULL);
INSERT INTO joint_event VALUES(128,'021237ae-72a1-5a96-819e-9f9d8dfbbc97','2026-11-02',1,37,'E37a','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',NULL,7,NULL,3,NULL);
INSERT INTO joint_event VALUES(129,'d45cc6df-eb3d-506c-b81c-a1c6d0bd645f','2026-11-02',1,38,'E38a','closed','[1868-09..1868-11-02]','[1868-09..1868-11-02]',682152,682214,0,'edtf',NULL,7,NULL,3,NULL);
INSERT INTO joint_event VALUES(130,'2df88065-f60f-5dfd-a89b-4a2ad425fd13','2026-11-02',1,38,'E38b','opened','Easter 1958','1958-04-04/1958-04-07',714873,714876,0,'decided',1,19,'upper half drawn off the dowel',11,NULL);
INSERT INTO joint_event VALUES(131,'f76a8b93-60ef-55ee-a93d-9ad0bd261eea','2026-11-02',1,38,'E38c','closed','1958-04-08/1958-04-19','1958-04-08/1958-04-19',714877,714888,0,'edtf',2,20,NULL,11,NULL);
INSERT INTO joint_event VALUES(132,'17e9d197-d33b-5970-80a2-8fae8e23e6a9','2026-11-02',1,39,'E39a','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,NULL);
INSERT INTO joint_event VALUES(133,'ff730af0-5c4a-5f5f-a2c1-1a9ff5d29b59','2026-11-02',1,40,'E40a','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,NULL);
INSERT INTO joint_event VALUES(134,'3e5d9103-4993-5038-a937-855a6710f0de','2026-11-02',1,41,'E41a','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,NULL);
INSERT INTO joint_event VALUES(135,'a7450b16-71f5-58cb-8c8f-9b853284672c','2026-11-02',1,42,'E42a','closed','1967-03-14','1967-03-14',718139,718139,0,'edtf',NULL,23,NULL,12,NULL);
INSERT INTO joint_event VALUES(136,'9799ea4f-e1fc-533e-85f5-060bd70c7d7d','2026-11-02',1,43,'E43a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(137,'bcb2992a-4708-5d92-9851-3436a09f7543','2026-11-02',1,43,'E43b','opened','2012-02-14','2012-02-14',734547,734547,0,'edtf',NULL,40,NULL,18,NULL);
INSERT INTO joint_event VALUES(138,'6829853e-e8e1-559d-8d68-9b1d71cfddee','2026-11-02',1,43,'E43c','closed','2012-04-24','2012-04-24',734617,734617,0,'edtf',NULL,44,NULL,18,'Rod back in its old hole, on the resin of 1989.');
INSERT INTO joint_event VALUES(139,'f12bc294-fe0f-56ae-a05e-1959725b5e9d','2026-11-02',1,44,'E44a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(140,'dc403cea-4ac9-5b38-8b3e-815509197476','2026-11-02',1,44,'E44b','opened','2012-02-14','2012-02-14',734547,734547,0,'edtf',NULL,40,NULL,18,NULL);
INSERT INTO joint_event VALUES(141,'c52e1638-ff25-5545-a65c-6fbb25762c2a','2026-11-02',1,44,'E44c','closed','2012-04-24','2012-04-24',734617,734617,0,'edtf',NULL,44,NULL,18,NULL);
INSERT INTO joint_event VALUES(142,'7b957298-ccc9-5c0a-8e8f-9fdee9b07204','2026-11-02',1,45,'E45a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(143,'09826186-6414-58fb-9524-7d952886cd45','2026-11-02',1,46,'E46a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(144,'308cc8b8-e607-516b-985e-f698a69c6a6d','2026-11-02',1,47,'E47a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(145,'8336e717-467f-55ed-8247-20c9a5195c14','2026-11-02',1,47,'E47b','opened','2012-02-21','2012-02-21',734554,734554,0,'edtf',NULL,41,NULL,18,'The rod drew out of the slab with a sleeve of stone dust.');
INSERT INTO joint_event VALUES(146,'0ef44a2c-e26d-5ecc-8c9b-03af9181baff','2026-11-02',1,47,'E47c','closed','2012-04-24','2012-04-24',734617,734617,0,'edtf',NULL,44,NULL,18,NULL);
INSERT INTO joint_event VALUES(147,'4d8c568a-eda7-56b5-ad55-260cb615098b','2026-11-02',1,48,'E48a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(148,'76b32cf1-424e-566c-afff-17fb6ff6d2fb','2026-11-02',1,49,'E49a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(149,'27294336-444e-5980-bd37-c85e2c349e4d','2026-11-02',1,50,'E50a','closed','1989-05-16','1989-05-16',726238,726238,0,'edtf',NULL,33,NULL,15,NULL);
INSERT INTO joint_event VALUES(150,'998d0480-babe-5e89-b527-46377afcccd8','2026-11-02',3,76,'E1','closed','winter 1894','1894-24',691739,691828,0,'words',NULL,52,NULL,23,NULL);
INSERT INTO joint_event VALUES(151,'b88f11d4-b9e5-5f90-b0b9-0b7e5e31471c','2026-11-02',3,77,'E2','closed','winter 1894','1894-24',691739,691828,0,'words',NULL,52,NULL,23,NULL);
INSERT INTO joint_event VALUES(152,'24fdf7d1-889e-586b-a805-f32448e5118c','2026-11-02',3,78,'E3','closed','winter 1894','1894-24',691739,691828,0,'words',NULL,52,NULL,23,NULL);
INSERT INTO joint_event VALUES(153,'36d0d8d1-dd7d-5c38-b83b-630f8670250a','2026-11-02',3,79,'E4','closed','winter 1894','1894-24',691739,691828,0,'words',NULL,52,NULL,23,NULL);
INSERT INTO joint_event VALUES(154,'6c2a914a-f5b7-5e75-8f3b-39825d03c105','2026-11-02',3,79,'E5','failed','between 1896 and 1907','1896/1907',692135,696516,0,'words',NULL,NULL,NULL,23,NULL);
INSERT INTO joint_event VALUES(155,'a5fbcf01-d26f-5d9f-951c-d42780e168f9','2026-11-02',3,79,'E6','closed','[1908..1911]','[1908..1911]',696517,697977,0,'edtf',NULL,54,NULL,23,NULL);
INSERT INTO joint_event VALUES(156,'a1547592-c1bf-541a-8690-c88137eba31c','2026-11-02',3,79,'E7','failed','[1912,1913]','[1912,1913]',697978,698708,0,'edtf',NULL,NULL,NULL,23,'The sherd was wanting.');
INSERT INTO joint_event VALUES(157,'03d73bfc-2445-5eba-ba62-c4e9437ec889','2026-11-02',3,77,'E8','failed','1958','1958',714780,715144,0,'edtf',NULL,NULL,NULL,28,'"Found lying in the dish."');
INSERT INTO joint_event VALUES(158,'c888db4b-931a-5c7c-9e37-d3dcd89621bd','2026-11-02',3,77,'E9','closed','1959-03','1959-03',715204,715234,0,'edtf',NULL,56,NULL,28,NULL);
INSERT INTO joint_event VALUES(159,'28cb5a47-3c55-508b-b66e-68f77f6031ff','2026-11-02',4,83,'E1','closed','before 1911','../1910',-9000000,697612,0,'words',NULL,61,NULL,23,NULL);
INSERT INTO joint_event VALUES(160,'d8a8abc2-9d4b-55d2-9b66-ee14dce31ea7','2026-11-02',4,84,'E2','closed','before 1911','../1910',-9000000,697612,0,'words',NULL,61,NULL,23,NULL);
INSERT INTO joint_event VALUES(161,'13198719-977d-532c-8f28-8ffc200d5c26','2026-11-02',4,83,'E3','opened','1972-11-07','1972-11-07',720204,720204,0,'edtf',NULL,62,NULL,29,NULL);
INSERT INTO joint_event VALUES(162,'0eae143c-667c-5464-a622-d85d19a0001b','2026-11-02',4,84,'E4','opened','1972-11-07','1972-11-07',720204,720204,0,'edtf',NULL,62,NULL,29,NULL);
INSERT INTO joint_event VALUES(163,'c3b2ec09-ff61-5027-bf65-e84aa5255592','2026-11-02',4,83,'E5','closed','8 November 1972','1972-11-08',720205,720205,0,'words',NULL,63,NULL,29,NULL);
INSERT INTO joint_event VALUES(164,'b6f5c348-2056-557b-bacb-5eae19794fb0','2026-11-02',4,84,'E6','closed','8 November 1972','1972-11-08',720205,720205,0,'words',NULL,63,NULL,29,'Set crooked.');
INSERT INTO joint_event VALUES(165,'ad48cfc4-6762-5cea-b172-a24a52e00437','2026-11-02',4,87,'E7','closed','8 November 1972','1972-11-08',720205,720205,0,'words',NULL,63,NULL,29,NULL);
INSERT INTO joint_event VALUES(166,'7a42ab63-7b86-541d-b013-03623125e179','2026-11-02',4,87,'E8','failed','1973/1979','1973/1979',720259,722814,0,'edtf',NULL,NULL,NULL,35,NULL);
INSERT INTO joint_event VALUES(167,'79f4e5a7-767c-5f91-aeeb-8050cec27d42','2026-11-02',4,87,'E9','closed','1980s','198X',722815,726467,0,'words',NULL,64,NULL,35,NULL);
INSERT INTO joint_event VALUES(168,'91f893f4-2640-5c32-83f0-e94ce0a3e9b7','2026-11-02',4,86,'E10','closed','2003-08-20','2003-08-20',731447,731447,0,'edtf',NULL,66,NULL,35,NULL);
INSERT INTO joint_event VALUES(169,'0e63e17e-3e29-51cd-a8d6-9c6de5f0c998','2026-11-02',4,88,'E11','closed','8 November 1972','1972-11-08',720205,720205,0,'words',NULL,63,NULL,29,NULL);
INSERT INTO joint_event VALUES(170,'e0fe608a-a6f3-5abb-b5c4-696f4d583c06','2026-11-02',4,89,'E12','closed','8 November 1972','1972-11-08',720205,720205,0,'words',NULL,63,NULL,29,NULL);
INSERT INTO joint_event VALUES(171,'f427917c-af8f-5c2d-b198-687c77f89a33','2026-11-02',5,91,'E1','closed','1660s','166X',605938,609590,0,'words',NULL,68,NULL,1,NULL);
INSERT INTO joint_event VALUES(172,'ce8abc74-c382-5e4d-b90a-34c1ecd7de3b','2026-11-02',5,92,'E2','closed','1660s','166X',605938,609590,0,'words',NULL,68,NULL,1,NULL);
INSERT INTO joint_event VALUES(173,'b8acbfcc-934c-5304-87b4-e24dd238fd50','2026-11-02',5,91,'E3','moving','2015-02-24','2015-02-24',735653,735653,0,'edtf',NULL,77,'top, 1 mm',39,NULL);
INSERT INTO joint_event VALUES(174,'96204d4a-9d6b-5710-b0c3-5f9400ac6f52','2026-11-02',5,94,'E4','closed','1890s','189X',689944,693595,0,'words',NULL,69,NULL,23,NULL);
INSERT INTO joint_event VALUES(175,'721ae0bf-4f1a-5aea-b19b-711fb8ac90b2','2026-11-02',5,95,'E5','closed','1904-05','1904-05',695177,695207,0,'edtf',NULL,70,NULL,23,NULL);
INSERT INTO joint_event VALUES(176,'448ccd64-2425-55eb-8db1-0e464d8e3546','2026-11-02',5,93,'E6','moving','2015-02-24','2015-02-24',735653,735653,0,'edtf',NULL,77,'two nails gone',39,NULL);
INSERT INTO joint_event VALUES(177,'f52c6e5b-a514-5175-a2ac-0078035256ac','2026-11-02',6,102,'E1','closed','1926','1926',703092,703456,0,'edtf',NULL,82,NULL,26,NULL);
INSERT INTO joint_event VALUES(178,'9701544f-6759-5c5e-8020-307eff76813c','2026-11-02',6,100,'E2','closed','1838','1838',670951,671315,0,'edtf',NULL,NULL,NULL,1,NULL);
INSERT INTO joint_event VALUES(179,'1f0478f1-f14a-5682-aabc-b69e2dbd843d','2026-11-02',6,103,'E3','closed','1838','1838',670951,671315,0,'edtf',NULL,NULL,NULL,1,NULL);
INSERT INTO joint_event VALUES(180,'393d9d43-816a-5130-8a97-65787f9d6db5','2026-11-02',6,100,'E4','moving','1907/1925','1907/1925',696152,703091,0,'edtf',NULL,NULL,NULL,26,'"Head lolls."');
INSERT INTO joint_event VALUES(181,'968a840e-e74c-5a5e-b287-c9b574b09caa','2026-11-02',6,100,'E5','closed','1926','1926',703092,703456,0,'edtf',NULL,82,NULL,26,NULL);
INSERT INTO joint_event VALUES(182,'e87cc014-5f60-5cba-9db8-87c50610ebb8','2026-11-02',6,100,'E6','moving','2014-03','2014-03',735293,735323,0,'edtf',NULL,87,'4 mm in front',38,NULL);
INSERT INTO joint_event VALUES(183,'b608647d-5177-5bcf-b9d5-e6c203d0287d','2026-11-02',6,100,'E7','closed','2014-09','2014-09',735477,735506,0,'edtf',NULL,90,NULL,38,'Packed, not glued.');
INSERT INTO joint_event VALUES(184,'5effdb06-9e23-58d1-8025-088b87b4c879','2026-11-02',6,103,'E8','moving','2014-03','2014-03',735293,735323,0,'edtf',NULL,87,'leans 4 degrees',38,NULL);
INSERT INTO joint_event VALUES(185,'5e82af0b-a63c-5b2b-8d53-df1e8d270e40','2026-11-02',6,101,'E9','moving','2014-03','2014-03',735293,735323,0,'edtf',NULL,NULL,NULL,38,'Tenon shrunk.');
INSERT INTO joint_event VALUES(186,'227c57e2-b7c8-5299-b55e-b0fc5f3a4fec','2026-11-02',6,104,'E10','closed','1838','1838',670951,671315,0,'edtf',NULL,NULL,NULL,1,NULL);
INSERT INTO joint_event VALUES(187,'6b07e19e-e05b-5249-b2d9-9b4e989e4f5f','2026-11-02',6,105,'E11','closed','1838','1838',670951,671315,0,'edtf',NULL,NULL,NULL,1,NULL);
INSERT INTO joint_event VALUES(188,'c305fbb8-cf2c-5204-84e7-aa1a0e8c3a50','2026-11-02',7,112,'E1','closed','1886','1886',688483,688847,0,'edtf',NULL,91,NULL,1,NULL);
INSERT INTO joint_event VALUES(189,'0f7b29f8-99fb-51ad-9640-18d02a5859d1','2026-11-02',7,114,'E2','closed','1886','1886',688483,688847,0,'edtf',NULL,91,NULL,1,NULL);
INSERT INTO joint_event VALUES(190,'65441b44-87c5-5143-aff1-6dc6d6f65eb5','2026-11-02',7,115,'E3','closed','1886','1886',688483,688847,0,'edtf',NULL,91,NULL,1,NULL);
INSERT INTO joint_event VALUES(191,'3bacdbcd-85e7-5afa-bdc6-9aca4fd970d2','2026-11-02',7,113,'E4','closed','1911~','1911~',697613,697977,2,'edtf',NULL,92,NULL,1,NULL);
INSERT INTO joint_event VALUES(192,'ac433227-7643-5d2b-b8b5-bbb2079ffdf7','2026-11-02',7,115,'E5','closed','mid 1970s','1974/1976',720624,721719,0,'words',NULL,95,NULL,32,NULL);
INSERT INTO joint_event VALUES(193,'be1ee4b8-2028-5f94-8d56-620fd2306fef','2026-11-02',7,115,'E6','moving','2008-10','2008-10',733316,733346,0,'edtf',NULL,NULL,NULL,36,NULL);
INSERT INTO joint_event VALUES(194,'36f1a495-80e0-5f04-a479-5bf978574641','2026-11-02',7,115,'E7','failed','between 1911 and 1973','1911/1973',697613,720623,0,'words',NULL,NULL,NULL,32,NULL);
INSERT INTO joint_event VALUES(195,'d17efd2d-88df-5324-a67a-069439c9ba3b','2026-11-02',8,118,'E1','closed','1850~','1850~',675334,675698,2,'edtf',NULL,101,NULL,1,NULL);
INSERT INTO joint_event VALUES(196,'48acc700-50dd-5f32-b45e-7526a67cde36','2026-11-02',8,119,'E2','closed','1850~','1850~',675334,675698,2,'edtf',NULL,101,NULL,1,NULL);
INSERT INTO joint_event VALUES(197,'cd62946c-831f-5121-8f29-aec0e1d97beb','2026-11-02',8,121,'E3','closed','1850~','1850~',675334,675698,2,'edtf',NULL,101,NULL,1,NULL);
INSERT INTO joint_event VALUES(198,'4d2caf4a-2de9-50c3-ae07-a7212d40da08','2026-11-02',8,122,'E4','closed','1850~','1850~',675334,675698,2,'edtf',NULL,101,NULL,1,NULL);
INSERT INTO joint_event VALUES(199,'76e6d257-074c-5fd0-aa94-b682a91f07e5','2026-11-02',8,120,'E5','closed','1949','1949',711493,711857,0,'edtf',NULL,103,NULL,28,NULL);
INSERT INTO joint_event VALUES(200,'65e61029-edae-5c16-845c-5866af697901','2026-11-02',8,121,'E6','failed','1993','1993',727564,727928,0,'edtf',NULL,NULL,NULL,41,'Slid out of its silicone.');
INSERT INTO joint_event VALUES(201,'716e0b20-9a41-5514-9954-9e0a284a168e','2026-11-02',8,118,'E7','opened','2021-06-08','2021-06-08',737949,737949,0,'edtf',NULL,106,NULL,41,NULL);
INSERT INTO joint_event VALUES(202,'cef92620-66dd-517a-9e78-0557919c08ee','2026-11-02',8,118,'E8','closed','2021-06-10','2021-06-10',737951,737951,0,'edtf',NULL,107,NULL,41,NULL);
INSERT INTO joint_event VALUES(203,'7c235feb-cc6c-5ac3-9e53-bf830b8c5636','2026-11-02',8,118,'E9','moving','2021-05-20','2021-05-20',737930,737930,0,'edtf',NULL,NULL,NULL,41,NULL);
INSERT INTO joint_event VALUES(204,'1c2297d1-152f-5d0d-85f5-17fb990c567c','2026-11-02',9,125,'E1','closed','1861','1861',679352,679716,0,'edtf',NULL,111,NULL,1,NULL);
INSERT INTO joint_event VALUES(205,'54d3f61a-5ed2-5e5c-bbf9-07ae04c06a18','2026-11-02',9,129,'E2','closed','1861','1861',679352,679716,0,'edtf',NULL,111,NULL,1,NULL);
INSERT INTO joint_event VALUES(206,'3da6f9e1-9595-55f1-a911-ba1d17689c3e','2026-11-02',9,126,'E3','closed','1899-02','1899-02',693262,693289,0,'edtf',NULL,112,NULL,23,NULL);
INSERT INTO joint_event VALUES(207,'cc3bcb95-d517-569b-9c07-02fa06a37093','2026-11-02',9,127,'E4','closed','between 1938 and 1952','1938/1952',707475,712953,0,'words',NULL,114,NULL,30,NULL);
INSERT INTO joint_event VALUES(208,'f9e8f793-e2f5-5772-bd28-05ea0d6a0ed3','2026-11-02',9,125,'E5','failed','2017-10','2017-10',736603,736633,0,'edtf',NULL,NULL,NULL,40,'The fall.');
INSERT INTO joint_event VALUES(209,'131534e2-1b60-588d-9e95-9e39a3030146','2026-11-02',9,125,'E6','closed','2018-06','2018-06',736846,736875,0,'edtf',NULL,119,NULL,40,'Sits on foam by its weight.');
INSERT INTO joint_event VALUES(210,'ad26e04f-11ec-5d3d-a120-e58d65324cc0','2026-11-02',9,129,'E7','moving','2018-01-16','2018-01-16',736710,736710,0,'edtf',NULL,117,NULL,40,'Rust scale between iron and plaster.');
INSERT INTO joint_event VALUES(211,'c524d4a0-56a6-5b66-914b-d8b1539fc41b','2026-11-02',10,133,'E1','closed','before 1958','../1957',-9000000,714779,0,'words',NULL,120,NULL,28,NULL);
INSERT INTO joint_event VALUES(212,'deae998f-32d4-5028-8b1a-d6d6bd7854cc','2026-11-02',10,134,'E2','closed','before 1958','../1957',-9000000,714779,0,'words',NULL,120,NULL,28,NULL);
INSERT INTO joint_event VALUES(213,'b042f1f6-80d0-52b3-b0a3-df97ae44448f','2026-11-02',10,135,'E3','closed','before 1958','../1957',-9000000,714779,0,'words',NULL,120,NULL,28,NULL);
INSERT INTO joint_event VALUES(214,'fe0e3934-9134-59a5-90cb-40b6c4ae8594','2026-11-02',10,137,'E4','closed','before 1958','../1957',-9000000,714779,0,'words',NULL,120,NULL,28,NULL);
INSERT INTO joint_event VALUES(215,'2ad37f95-72ba-52d7-b31c-e47e598aab55','2026-11-02',10,133,'E5','opened','1969-01','1969-01',718798,718828,0,'edtf',1,121,NULL,29,NULL);
INSERT INTO joint_event VALUES(216,'e8daec15-1594-54bf-b8be-3ab15dbd780f','2026-11-02',10,134,'E6','opened','1969-01','1969-01',718798,718828,0,'edtf',1,121,NULL,29,NULL);
INSERT INTO joint_event VALUES(217,'35d4c20b-a843-5246-894a-6ea3bd31f098','2026-11-02',10,135,'E7','opened','1969-01','1969-01',718798,718828,0,'edtf',1,121,NULL,29,NULL);
INSERT INTO joint_event VALUES(218,'7ed5c840-6d3f-5902-9e3f-c7ff5e7f6045','2026-11-02',10,133,'E8','closed','1969-01','1969-01',718798,718828,0,'edtf',2,122,NULL,29,NULL);
INSERT INTO joint_event VALUES(219,'dafab06e-b583-5398-8dad-c1fc562316e0','2026-11-02',10,134,'E9','closed','1969-01','1969-01',718798,718828,0,'edtf',2,122,NULL,29,NULL);
INSERT INTO joint_event VALUES(220,'acf85739-b283-5e9d-bb12-e3b8d2c1280e','2026-11-02',10,135,'E10','closed','1969-01','1969-01',718798,718828,0,'edtf',2,122,NULL,29,NULL);
INSERT INTO joint_event VALUES(221,'a0e7b1f4-d0ab-5e1a-936a-17f5b478b731','2026-11-02',10,137,'E11','failed','1970/1982','1970/1982',719163,723910,0,'edtf',NULL,NULL,NULL,34,NULL);
INSERT INTO joint_event VALUES(222,'6a709db1-50c5-5775-9c75-63b1d08c3578','2026-11-02',10,137,'E12','closed','[1983..1987]','[1983..1987]',723911,725736,0,'edtf',NULL,123,NULL,34,NULL);
INSERT INTO joint_event VALUES(223,'d31bd0aa-cbc0-5a5a-a170-e53140fb15bb','2026-11-02',10,133,'E13','opened','1998-02-23','1998-02-23',729443,729443,0,'edtf',NULL,124,NULL,34,NULL);
INSERT INTO joint_event VALUES(224,'0068f67f-2396-5408-b5a3-a4b695a02ca8','2026-11-02',10,134,'E14','opened','1998-02-23','1998-02-23',729443,729443,0,'edtf',NULL,124,NULL,34,NULL);
INSERT INTO joint_event VALUES(225,'6fefa5c8-9f21-5959-a03b-e2232539b7e1','2026-11-02',10,133,'E15','closed','1998-03-04','1998-03-04',729452,729452,0,'edtf',NULL,125,NULL,34,NULL);
INSERT INTO joint_event VALUES(226,'ab4aa69f-d377-5db1-a5cf-03afd4f82680','2026-11-02',10,134,'E16','closed','1998-03-04','1998-03-04',729452,729452,0,'edtf',NULL,125,NULL,34,NULL);
INSERT INTO joint_event VALUES(227,'b9212cc8-77c3-5b77-a4a9-c68dbcfa8a66','2026-11-02',10,136,'E17','closed','1998-04','1998-04',729480,729509,0,'edtf',NULL,126,NULL,34,NULL);
INSERT INTO joint_event VALUES(228,'2eaf3794-e9d7-55be-8cb4-133b40da4cdd','2026-11-02',10,137,'E18','moving','2026-05-28','2026-05-28',739764,739764,0,'edtf',NULL,127,'a click under the thumb',43,NULL);
INSERT INTO joint_event VALUES(229,'d723859f-8fcc-5ec1-a7e9-ad2704795b04','2026-11-02',11,140,'E1','closed','1879','1879',685926,686290,0,'edtf',NULL,128,NULL,1,NULL);
INSERT INTO joint_event VALUES(230,'808a56df-d437-52aa-8d5e-cf171828cbda','2026-11-02',11,141,'E2','closed','1879','1879',685926,686290,0,'edtf',NULL,128,NULL,1,NULL);
INSERT INTO joint_event VALUES(231,'7a260f83-6ded-5f89-8ff3-8e7df54312da','2026-11-02',11,145,'E3','closed','1879','1879',685926,686290,0,'edtf',NULL,128,NULL,1,NULL);
INSERT INTO joint_event VALUES(232,'87f19874-d960-5875-bf02-bf2dbc6c2d3b','2026-11-02',11,142,'E4','closed','1893-10','1893-10',691313,691343,0,'edtf',NULL,130,NULL,23,NULL);
INSERT INTO joint_event VALUES(233,'d9b6197f-8ac7-5944-96e1-c57b45893242','2026-11-02',11,144,'E5','closed','1893-10','1893-10',691313,691343,0,'edtf',NULL,130,NULL,23,NULL);
INSERT INTO joint_event VALUES(234,'8541ae2a-2c16-5626-8384-308bc31780eb','2026-11-02',11,143,'E6','closed','1893-10','1893-10',691313,691343,0,'edtf',NULL,131,NULL,23,'Held by a strap, not stuck.');
INSERT INTO joint_event VALUES(235,'1859117d-1662-534f-9b3a-931abd46f8d1','2026-11-02',11,143,'E7','opened','1988-06','1988-06',725889,725918,0,'edtf',1,132,NULL,31,NULL);
INSERT INTO joint_event VALUES(236,'cdb6c22c-3105-58a2-b243-6f84a77f5eea','2026-11-02',11,143,'E8','closed','1988-06','1988-06',725889,725918,0,'edtf',2,133,NULL,31,NULL);
INSERT INTO joint_event VALUES(237,'f1d822b7-2d1b-55aa-90d6-55acaa2124c0','2026-11-02',11,141,'E9','moving','2023-03-08','2023-03-08',738587,738587,0,'edtf',NULL,135,'lower edge',1,NULL);
INSERT INTO joint_event VALUES(238,'7901eafa-ba4f-5558-bab3-fc178c75407f','2026-11-02',12,148,'E1','closed','before 1905','../1904',-9000000,695421,0,'words',NULL,136,NULL,23,NULL);
INSERT INTO joint_event VALUES(239,'af4ebfc9-431c-5a59-9f3a-7000ad4f5056','2026-11-02',12,149,'E2','closed','before 1905','../1904',-9000000,695421,0,'words',NULL,136,NULL,23,NULL);
INSERT INTO joint_event VALUES(240,'d6ed724a-87c8-5d9b-b1b9-ebd9e6f321ca','2026-11-02',12,151,'E3','closed','1802','1802',657802,658166,0,'edtf',NULL,137,NULL,1,NULL);
INSERT INTO joint_event VALUES(241,'29a2f932-1351-5084-8ca3-f258ccc9eec2','2026-11-02',12,153,'E4','closed','1802','1802',657802,658166,0,'edtf',NULL,137,NULL,1,NULL);
INSERT INTO joint_event VALUES(242,'ca975ea9-ed0b-5c24-8b9c-5f3e20fc3e8c','2026-11-02',12,154,'E5','closed','1802','1802',657802,658166,0,'edtf',NULL,137,NULL,1,NULL);
INSERT INTO joint_event VALUES(243,'9d8ae9b5-4b5c-5b0d-8b85-edf8f29965eb','2026-11-02',12,150,'E6','closed','1906-03','1906-03',695846,695876,0,'edtf',NULL,138,NULL,23,NULL);
INSERT INTO joint_event VALUES(244,'87b27ab0-3193-5ac3-bc09-051a3c15f91f','2026-11-02',12,148,'E7','opened','1973-09','1973-09',720502,720531,0,'edtf',1,139,NULL,29,NULL);
INSERT INTO joint_event VALUES(245,'aaa78924-43c1-543b-ad88-a2717bee3f4c','2026-11-02',12,148,'E8','closed','1973-09','1973-09',720502,720531,0,'edtf',2,140,NULL,29,NULL);
INSERT INTO joint_event VALUES(246,'9eace2fe-5a7e-58b6-98e6-0582cb9fb3b6','2026-11-02',12,155,'E9','closed','1973-09','1973-09',720502,720531,0,'edtf',NULL,140,NULL,29,NULL);
INSERT INTO joint_event VALUES(247,'62c7d4be-6c37-5dce-a610-f459bb1ae6bf','2026-11-02',12,156,'E10','closed','1973-09','1973-09',720502,720531,0,'edtf',NULL,140,NULL,29,NULL);
INSERT INTO joint_event VALUES(248,'ad5e86b3-33c1-5ef1-bc0f-457c6c0bb9d1','2026-11-02',12,150,'E11','moving','1985-04','1985-04',724732,724761,0,'edtf',NULL,NULL,NULL,31,'Sounds hollow over the top third.');
INSERT INTO joint_event VALUES(249,'58686ab8-e0b8-5bc2-9f18-0d431c2e286e','2026-11-02',13,159,'E1','closed','1838','1838',670951,671315,0,'edtf',NULL,144,NULL,1,NULL);
INSERT INTO joint_event VALUES(250,'2940237a-c2c7-5341-9ad5-824bf779ab14','2026-11-02',13,162,'E2','closed','1838','1838',670951,671315,0,'edtf',NULL,144,NULL,1,NULL);
INSERT INTO joint_event VALUES(251,'09f7b5b0-db97-5f43-a357-8c17960f31f4','2026-11-02',13,163,'E3','closed','1838','1838',670951,671315,0,'edtf',NULL,144,NULL,1,NULL);
INSERT INTO joint_event VALUES(252,'38fdff1b-86c6-5117-a2c9-b62a5ce71448','2026-11-02',13,159,'E4','opened','1938-04','1938-04',707565,707594,0,'edtf',1,145,NULL,26,NULL);
INSERT INTO joint_event VALUES(253,'df7e7d54-c314-5e49-a117-3be2074446d4','2026-11-02',13,159,'E5','closed','1938-04','1938-04',707565,707594,0,'edtf',2,145,NULL,26,NULL);
INSERT INTO joint_event VALUES(254,'2cfd34d1-0c9a-54fc-bef7-c4e1584bb889','2026-11-02',13,161,'E6','closed','1938-04','1938-04',707565,707594,0,'edtf',NULL,145,NULL,26,NULL);
INSERT INTO joint_event VALUES(255,'ab7a8ba6-5ebc-531b-9bff-1ffa2a7b98b1','2026-11-02',13,164,'E7','closed','1938-04','1938-04',707565,707594,0,'edtf',NULL,145,NULL,26,NULL);
INSERT INTO joint_event VALUES(256,'1fbd2b2d-2ee1-5dc3-a68a-a7f4bcdcf29c','2026-11-02',13,165,'E8','closed','1938-04','1938-04',707565,707594,0,'edtf',NULL,145,NULL,26,NULL);
INSERT INTO joint_event VALUES(257,'536f8825-db70-5388-acbe-7051be71f4d1','2026-11-02',13,160,'E9','closed','1938-04','1938-04',707565,707594,0,'edtf',NULL,146,NULL,26,NULL);
INSERT INTO joint_event VALUES(258,'e335c7a5-bcdf-5f18-a378-4f787aebe141','2026-11-02',13,160,'E10','moving','2026-06-09','2026-06-09',739776,739776,0,'edtf',NULL,153,'10 mm past the solder',43,NULL);
INSERT INTO joint_event VALUES(259,'01f917ee-ab91-5491-8cb6-21a2806cb3b1','2026-11-02',2,169,'E01a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(260,'4cf197a5-ab13-5471-a567-5a34f2b69544','2026-11-02',2,170,'E02a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(261,'1924d695-4cf6-5953-a164-f8353b499bd4','2026-11-02',2,171,'E03a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(262,'be14d47d-2c80-56dd-a5c8-b5a6c4d716f1','2026-11-02',2,172,'E04a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(263,'f1e886d7-b2cc-5abf-815d-6996ad7c024f','2026-11-02',2,173,'E05a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(264,'92489fbd-f297-5d4d-bb14-e1d4e35db3c1','2026-11-02',2,174,'E06a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(265,'5a4713fb-4c95-50dc-a8d7-1c553dc7ca37','2026-11-02',2,175,'E07a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(266,'99181050-bbfd-5d93-b870-fc59753784ea','2026-11-02',2,176,'E08a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(267,'aa23743b-0b0f-558b-8446-5f608d233031','2026-11-02',2,177,'E09a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(268,'c0d9f23a-1a62-5bd5-aeaa-841b4646de51','2026-11-02',2,178,'E10a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(269,'3da807a5-be37-5747-a102-7a8dfe959995','2026-11-02',2,179,'E11a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(270,'83785996-d049-5692-91c3-e085d5ab4812','2026-11-02',2,180,'E12a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(271,'a8c7b3a7-51e3-5ff8-9a1e-375c73f8aaed','2026-11-02',2,181,'E13a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(272,'2ff59e4d-451e-59af-80ba-7fc6693a913a','2026-11-02',2,182,'E14a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(273,'3aafb1a2-a9d2-531b-a03e-78e7b34b4a0a','2026-11-02',2,183,'E15a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(274,'ac52a326-480f-54e3-93bd-3807bd8200e7','2026-11-02',2,184,'E16a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(275,'f54885f2-6d2b-5e91-b5c7-c0d845560b84','2026-11-02',2,185,'E17a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(276,'7714ec40-52b5-5b7e-bfd5-9227f3037e74','2026-11-02',2,187,'E19a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(277,'bb1f222f-d98b-544b-b3dd-d7c5739b3c97','2026-11-02',2,175,'E07b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(278,'50a58717-0b37-5b5f-94d6-c0653b76e447','2026-11-02',2,175,'E07c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(279,'fe25905c-2e31-5907-a127-f716a04f9738','2026-11-02',2,176,'E08b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(280,'69aa2291-ac97-506b-8af9-dc5b7bf02a84','2026-11-02',2,176,'E08c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(281,'668a2d67-6014-58b0-8922-47555f824652','2026-11-02',2,177,'E09b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(282,'2e1d45ec-f428-5c89-85c6-c86a6639cdfb','2026-11-02',2,177,'E09c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(283,'c3bb1140-423c-5e1b-9b20-4e5e65dbf9ce','2026-11-02',2,178,'E10b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(284,'a562d642-df53-57aa-8688-4867a32c9550','2026-11-02',2,178,'E10c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(285,'867057ea-c3c8-5f00-8ad0-34d0022de092','2026-11-02',2,179,'E11b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(286,'6966a122-aba1-5c6f-8be9-a57e5019431a','2026-11-02',2,179,'E11c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(287,'3736f26a-38f9-51f3-8cdf-dc30526c16eb','2026-11-02',2,180,'E12b','opened','September 1952','1952-09',712832,712861,0,'words',1,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(288,'9461096c-a9b7-5321-9e36-a87df0b9af03','2026-11-02',2,180,'E12c','closed','1952-10/1952-11','1952-10/1952-11',712862,712922,0,'edtf',2,160,NULL,28,NULL);
INSERT INTO joint_event VALUES(289,'f28f80b8-10b4-5ead-aab3-b57cab9931cc','2026-11-02',2,181,'E13b','failed','1978-02','1978-02',722116,722143,0,'edtf',NULL,NULL,NULL,30,'Fell in overnight.');
INSERT INTO joint_event VALUES(290,'4f47b46a-7d22-5471-a6a0-5143740114c4','2026-11-02',2,181,'E13c','closed','1978-03','1978-03',722144,722174,0,'edtf',NULL,162,NULL,30,NULL);
INSERT INTO joint_event VALUES(291,'962e7919-1a12-554f-84fe-5bb98cf123e6','2026-11-02',2,182,'E14b','failed','1978-02','1978-02',722116,722143,0,'edtf',NULL,NULL,NULL,30,NULL);
INSERT INTO joint_event VALUES(292,'18e99f0b-99f8-5adc-a51f-bc2b5b0ef3b0','2026-11-02',2,182,'E14c','closed','1978-03','1978-03',722144,722174,0,'edtf',NULL,162,NULL,30,NULL);
INSERT INTO joint_event VALUES(293,'16a722c5-7536-5a73-b7d1-3fd28e4f2124','2026-11-02',2,183,'E15b','failed','1978-02','1978-02',722116,722143,0,'edtf',NULL,NULL,NULL,30,NULL);
INSERT INTO joint_event VALUES(294,'64994650-69b4-58b3-8542-72d5405e1ab1','2026-11-02',2,183,'E15c','closed','1978-03','1978-03',722144,722174,0,'edtf',NULL,162,NULL,30,NULL);
INSERT INTO joint_event VALUES(295,'518c3d2c-1497-57d3-9eae-74f4f5208022','2026-11-02',2,184,'E16b','failed','1978-02','1978-02',722116,722143,0,'edtf',NULL,NULL,NULL,30,NULL);
INSERT INTO joint_event VALUES(296,'9cacb83d-e653-5391-8eef-4cf2e47d8a7b','2026-11-02',2,184,'E16c','closed','1978-04','1978-04',722175,722204,0,'edtf',NULL,163,NULL,30,NULL);
INSERT INTO joint_event VALUES(297,'d4ba0bac-8c24-59ca-8036-f90719535ce7','2026-11-02',2,185,'E17b','failed','1978-02','1978-02',722116,722143,0,'edtf',NULL,NULL,NULL,30,NULL);
INSERT INTO joint_event VALUES(298,'054e229a-ac1d-5973-ae8b-f7c4d480dce8','2026-11-02',2,185,'E17c','closed','1978-04','1978-04',722175,722204,0,'edtf',NULL,163,NULL,30,NULL);
INSERT INTO joint_event VALUES(299,'085a2c8f-3b51-5117-946d-72bf86df6f39','2026-11-02',2,175,'E07d','opened','1996-08-05/1996-08-12','1996-08-05/1996-08-12',728876,728883,0,'edtf',NULL,166,NULL,33,NULL);
INSERT INTO joint_event VALUES(300,'0b8499b1-a530-5644-b8d3-36938e7b6f9e','2026-11-02',2,175,'E07e','closed','1996-09-02/1996-09-06','1996-09-02/1996-09-06',728904,728908,0,'edtf',NULL,168,NULL,33,NULL);
INSERT INTO joint_event VALUES(301,'dc23fb0c-24a1-5865-a417-a47f2ebb2866','2026-11-02',2,176,'E08d','opened','1996-08-05/1996-08-12','1996-08-05/1996-08-12',728876,728883,0,'edtf',NULL,166,NULL,33,NULL);
INSERT INTO joint_event VALUES(302,'f322c579-5464-59df-8eda-726af34aedc5','2026-11-02',2,176,'E08e','closed','1996-09-02/1996-09-06','1996-09-02/1996-09-06',728904,728908,0,'edtf',NULL,168,NULL,33,NULL);
INSERT INTO joint_event VALUES(303,'3c5ea276-7403-5a48-8c00-b303f7b38c8d','2026-11-02',2,177,'E09d','opened','1996-08-05/1996-08-12','1996-08-05/1996-08-12',728876,728883,0,'edtf',NULL,166,NULL,33,NULL);
INSERT INTO joint_event VALUES(304,'8c977ba7-b1e7-5224-9a26-cbeca217a58d','2026-11-02',2,177,'E09e','closed','1996-09-02/1996-09-06','1996-09-02/1996-09-06',728904,728908,0,'edtf',NULL,168,NULL,33,NULL);
INSERT INTO joint_event VALUES(305,'9a7126d7-13d7-5fc6-9ca2-6da6af883657','2026-11-02',2,178,'E10d','opened','1996-08-05/1996-08-12','1996-08-05/1996-08-12',728876,728883,0,'edtf',NULL,166,NULL,33,NULL);
INSERT INTO joint_event VALUES(306,'bd152354-7efc-5c59-acaa-144b794c34a0','2026-11-02',2,178,'E10e','closed','1996-09-02/1996-09-06','1996-09-02/1996-09-06',728904,728908,0,'edtf',NULL,168,NULL,33,NULL);
INSERT INTO joint_event VALUES(307,'8b576682-f314-5168-a249-b471af7a7807','2026-11-02',2,186,'E18a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,155,NULL,24,NULL);
INSERT INTO joint_event VALUES(308,'c1bf658a-4a1b-527a-ae96-5be4885cbd67','2026-11-02',2,188,'E20a','closed','1936','1936',706744,707109,0,'edtf',NULL,157,NULL,26,NULL);
INSERT INTO joint_event VALUES(309,'86a7adc4-35de-5968-9b39-d6b91ad95f0c','2026-11-02',2,188,'E20b','moving','2025-04-08','2025-04-08',739349,739349,0,'edtf',NULL,171,NULL,42,'Turns under the hand.');
INSERT INTO joint_event VALUES(310,'e4cfaf82-e07c-57b1-bf60-a43b04c0b5c3','2026-11-02',2,182,'E14d','moving','2025-04-08','2025-04-08',739349,739349,0,'edtf',NULL,171,'inside edge',42,'0.3 mm lower than in 1996.');
INSERT INTO joint_event VALUES(311,'733195f8-744b-5493-b95d-fbdcfd82a242','2026-11-02',2,189,'E21a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(312,'7952744b-29dc-5160-8ad5-23a4eb6274b6','2026-11-02',2,189,'E21b','opened','September 1952','1952-09',712832,712861,0,'words',NULL,159,NULL,28,NULL);
INSERT INTO joint_event VALUES(313,'48ea242e-428b-5a2d-944a-de70125c0df9','2026-11-02',2,190,'E22a','closed','between 1890 and 1891-10-06','1890/1891-10-06',689944,690587,0,'words',NULL,154,NULL,24,NULL);
INSERT INTO joint_event VALUES(314,'c7fbf27f-7d52-51a9-a103-894a3694ca95','2026-11-02',2,190,'E22b','opened','September 1952','1952-09',712832,712861,0,'words',NULL,159,NULL,28,NULL);
CREATE TABLE layer (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	place_id INTEGER, 
	ref TEXT NOT NULL, 
	intervention_id INTEGER, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	origin TEXT, 
	material_id INTEGER, 
	material_class_id INTEGER, 
	material_words TEXT, 
	role TEXT, 
	stack INTEGER, 
	side TEXT, 
	zone TEXT, 
	coverage TEXT, 
	concentration TEXT, 
	carrier TEXT, 
	dry TEXT, 
	identified TEXT, 
	significance TEXT, 
	significance_by_id INTEGER, 
	source_id INTEGER, 
	note TEXT, 
	came_from INTEGER NOT NULL, 
	came_to INTEGER NOT NULL, 
	reduced_from INTEGER NOT NULL, 
	reduced_to INTEGER NOT NULL, 
	gone_from INTEGER NOT NULL, 
	gone_to INTEGER NOT NULL, 
	came_flags INTEGER NOT NULL, 
	reduced_flags INTEGER NOT NULL, 
	gone_flags INTEGER NOT NULL, 
	CONSTRAINT ck_layer_coverage_known CHECK (coverage IN ('whole', 'part', 'spots', 'unknown')), 
	CONSTRAINT ck_layer_dry_known CHECK (dry IN ('yes', 'no', 'unknown')), 
	CONSTRAINT ck_layer_identified_known CHECK (identified IN ('analysed', 'documented by the maker', 'documented later', 'inferred', 'unknown')), 
	CONSTRAINT ck_layer_origin_known CHECK (origin IN ('applied', 'maker', 'arisen')), 
	CONSTRAINT ck_layer_side_known CHECK (side IN ('A', 'B')), 
	CONSTRAINT ck_layer_significance_known CHECK (significance IN ('keep', 'may go', 'undecided')), 
	CONSTRAINT ck_layer_zone_known CHECK (zone IN ('face', 'edge', 'core')), 
	CONSTRAINT ck_layer_bounds_in_order CHECK (came_from <= came_to AND reduced_from <= reduced_to AND gone_from <= gone_to), 
	CONSTRAINT ck_layer_came_before_it_went CHECK (came_to <= gone_to AND came_from <= gone_from AND came_to <= reduced_to AND came_from <= reduced_from), 
	CONSTRAINT ck_layer_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT fk_layer_material_class_id FOREIGN KEY(material_class_id) REFERENCES material_class (id), 
	CONSTRAINT fk_layer_material_id FOREIGN KEY(material_id) REFERENCES material (id), 
	CONSTRAINT fk_layer_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id), 
	CONSTRAINT fk_layer_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id), 
	CONSTRAINT fk_layer_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_layer_significance_by_id FOREIGN KEY(significance_by_id) REFERENCES person (id), 
	CONSTRAINT fk_layer_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_layer_object_id_id UNIQUE (object_id, id), 
	CONSTRAINT uq_layer_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_layer_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO layer VALUES(1,'a83e2c96-21d8-5ff8-93d2-93b4a9192d8d','2026-11-02',1,1,'L01a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,'yes','inferred','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(2,'a5cd2bcb-7f47-5a91-85c9-d9095069412d','2026-11-02',1,1,'L01b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(3,'493c526d-2d61-546e-a9bd-bf72d6146b97','2026-11-02',1,1,'L01c',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,11,'Card: "plaster, and putty where thin".',714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(4,'026aaff4-d755-5ff3-abdb-574dff2ea384','2026-11-02',1,2,'L02a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(5,'a2b39df6-2bfa-5ae5-98e6-82d15f8f9368','2026-11-02',1,2,'L02b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(6,'f48c0114-f4c1-506b-b105-d3c96d2a5f03','2026-11-02',1,2,'L02c',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,11,NULL,714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(7,'5d64d494-ef23-55c7-a822-d5727d608c81','2026-11-02',1,3,'L03a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(8,'807c475c-024c-59eb-ba31-e2655b38ca9d','2026-11-02',1,3,'L03b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,20000000,20000000,682152,714874,0,0,0);
INSERT INTO layer VALUES(9,'ea1b6119-4c5e-591c-86ad-4584f5d68772','2026-11-02',1,3,'L03c',20,NULL,NULL,-8000000,8000000,0,'blank','applied',31,NULL,NULL,'bedding',2,NULL,'face','part',NULL,NULL,NULL,'documented by the maker','may go',14,11,'"Putty under the right half only."',714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(10,'0ad4335c-bc05-50a8-b254-e709552e7651','2026-11-02',1,4,'L04a',2,NULL,NULL,-8000000,8000000,0,'blank','maker',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(11,'c55c2e19-84f9-5f4e-a4c6-fc1aaadf1118','2026-11-02',1,4,'L04b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',42,NULL,NULL,'mastic',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,'"White & red lead to the bason, 9 lb."',682152,682214,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(12,'ae1a8828-1004-513c-bbd2-168e257b3759','2026-11-02',1,4,'L04c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706178,706178,706379,714779,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(13,'a2326554-8864-5cb5-b55b-cbba025866bb','2026-11-02',1,4,'L04d',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'fill',3,NULL,'core','part',NULL,NULL,NULL,'documented by the maker','may go',NULL,11,NULL,714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(14,'ac380aeb-ccfd-5b69-96dd-9cee559b8161','2026-11-02',1,5,'L05a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,'Never lifted, as far as any paper says.',635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(15,'21123ea0-69c7-5d11-b9d2-0727166239b3','2026-11-02',1,5,'L05b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(16,'51f9c3bf-44cc-5b5b-99cd-b702d7cb7bec','2026-11-02',1,5,'L05c',NULL,'1934/1976','1934/1976',706014,721719,0,'edtf','arisen',116,NULL,NULL,'salts',2,NULL,'edge','spots',NULL,NULL,NULL,'inferred','may go',NULL,13,'White fur above the cement, none below it.',706014,721719,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(17,'feda1ac0-f48a-5a99-9e6c-63e69a5264ca','2026-11-02',1,6,'L06a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,718138,718138,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(18,'b6cc25ff-25a8-5845-ae2e-9fe058106ac8','2026-11-02',1,6,'L06b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,718138,718138,0,0,0);
INSERT INTO layer VALUES(19,'b0d20011-e1e5-5510-9a63-4e94044fb795','2026-11-02',1,6,'L06c',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,12,'On damp stone. Barrier: not recorded.',718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(20,'7fda7b2a-97ed-5b75-b0da-886712620e1f','2026-11-02',1,6,'L06d',24,NULL,NULL,-8000000,8000000,0,'blank','applied',79,NULL,NULL,'fill',3,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,12,'Yellowed to the colour of weak tea.',718140,718140,726103,734868,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(21,'b70c6bde-5e3e-5ea3-a7c8-7680194f341d','2026-11-02',1,6,'L06e',45,NULL,NULL,-8000000,8000000,0,'blank','applied',89,NULL,NULL,'fill',4,NULL,'edge','part',NULL,NULL,'no','documented by the maker','may go',14,18,'Over the gap where the stopping had fallen.',734624,734654,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(22,'0925f175-b786-5adb-98e3-f07bac4bbbba','2026-11-02',1,7,'L07a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(23,'c917f5ed-78ce-5f7c-a3ac-7d492e633727','2026-11-02',1,7,'L07e',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,3,NULL,682152,682214,20000000,20000000,718138,718138,0,0,0);
INSERT INTO layer VALUES(24,'c3264558-5aee-5dda-bff2-333749c98f4b','2026-11-02',1,7,'L07b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,718138,718138,0,0,0);
INSERT INTO layer VALUES(25,'935b7936-34b4-567f-b09b-602c87da086c','2026-11-02',1,7,'L07c',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,12,'On damp stone. Barrier: not recorded.',718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(26,'176b5fe3-fe9f-52e3-9faf-ab3e0a0bf65e','2026-11-02',1,7,'L07d',24,NULL,NULL,-8000000,8000000,0,'blank','applied',79,NULL,NULL,'fill',3,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,12,NULL,718140,718140,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(27,'d3924fe5-c8ef-59ab-bf2c-a0120267856d','2026-11-02',1,8,'L08a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(28,'2df7c697-6201-5330-b1ff-ed87ba4cdc9d','2026-11-02',1,8,'L08b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(29,'ecefffb5-9a1e-5cba-9cb4-fc034a893dc6','2026-11-02',1,9,'L09a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(30,'17021add-2594-5f56-aef3-14481b59f9ae','2026-11-02',1,9,'L09b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706178,706178,734624,734654,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(31,'1091153d-f6f7-593c-b594-7c8d6b478e14','2026-11-02',1,9,'L09c',45,NULL,NULL,-8000000,8000000,0,'blank','applied',89,NULL,NULL,'fill',2,NULL,'edge','part',NULL,NULL,'no','documented by the maker','may go',14,18,NULL,734624,734654,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(32,'c2a1cac8-39ee-5313-acb8-4f79cc0c0955','2026-11-02',1,10,'L10a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,20000000,20000000,682060,682151,0,0,0);
INSERT INTO layer VALUES(33,'70119d10-446e-5d05-aa13-f519a236d6cc','2026-11-02',1,10,'L10b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(34,'7ec16106-3983-534f-a6fd-46188f63cad7','2026-11-02',1,10,'L10c',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,11,NULL,714877,714888,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(35,'bf3d6953-b313-5de2-92c5-80ad852b1cb7','2026-11-02',1,11,'L11a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(36,'faab5a71-25d0-5523-8b2f-3a77989de6f0','2026-11-02',1,11,'L11b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(37,'9c84fcb3-27f8-51e1-9c44-911b90ea356f','2026-11-02',1,11,'L11c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,714873,714876,0,0,0);
INSERT INTO layer VALUES(38,'73e1d496-541e-552d-981c-cea450977351','2026-11-02',1,11,'L11d',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',3,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,11,NULL,714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(39,'8e8d083d-67a0-5f58-a13a-cd79b686cfa1','2026-11-02',1,12,'L12a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(40,'0a01ca6e-ddf0-59bc-86f7-683cc1173afc','2026-11-02',1,12,'L12b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(41,'d521d93b-db1d-58fc-bb7d-e70e55333464','2026-11-02',1,12,'L12c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,714873,714876,0,0,0);
INSERT INTO layer VALUES(42,'60519046-655a-52dd-a4d8-49ef84c84bcd','2026-11-02',1,12,'L12d',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',3,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,11,NULL,714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(43,'ef884290-407a-59f0-ac5e-f3b568a133a0','2026-11-02',1,13,'L13a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,726232,726234,0,0,0);
INSERT INTO layer VALUES(44,'a9a85482-5f61-5b9c-b9ea-bbc6137d15af','2026-11-02',1,13,'L13b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,3,NULL,682152,682214,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(45,'4c3c2606-b3b5-5132-bce5-f3307b947c99','2026-11-02',1,13,'L13c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(46,'332837d1-80e6-5423-b1ef-939b1595957e','2026-11-02',1,13,'L13d',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',3,'A','face','whole','10 % w/v','acetone','no','documented by the maker','keep',14,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(47,'1b201ea5-ba80-5adb-a1d4-54fe5771be5a','2026-11-02',1,13,'L13e',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',4,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(48,'f8df1a2b-e4a5-5f93-acb2-21b209b550eb','2026-11-02',1,13,'L13f',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',5,'B','face','whole','10 % w/v','acetone','no','documented by the maker','keep',14,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(49,'e6107c08-7b53-5503-a23b-80e5654034b6','2026-11-02',1,14,'L14a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'analysed','keep',14,2,'Thin section from the back edge, 2012: trass grains.',635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(50,'4bd8cab6-fee4-5524-8cf6-7d896e4d3557','2026-11-02',1,14,'L14b',8,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',1,'A','face','spots',NULL,NULL,'unknown','inferred','undecided',14,4,'Only the letter has it; the bill has Roman cement here. A brown spot deep in the gap in front may be it, or oil.',635523,683368,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(51,'a862113c-01fa-55b1-acf8-58cf68f01416','2026-11-02',1,14,'L14c',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'pointing',2,NULL,'edge','unknown',NULL,NULL,NULL,'documented later',NULL,NULL,8,'"Old brown cement" raked out in 1934.',682152,682214,20000000,20000000,706134,706164,0,0,0);
INSERT INTO layer VALUES(52,'3c7fdaa1-87bd-5c82-b7c2-10e6686becbb','2026-11-02',1,14,'L14d',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',3,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706178,706178,734624,734654,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(53,'7c14f2b4-4561-588c-9457-1b6cb3b3f6e5','2026-11-02',1,14,'L14e',34,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'grout',4,NULL,'core','part',NULL,NULL,'unknown','documented by the maker','undecided',14,15,'About 60 ml. Where it went is not known; the tight back cannot have taken it.',726240,726240,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(54,'6e5f3ba8-f26f-5a44-8cff-16cd78a6c08d','2026-11-02',1,14,'L14f',45,NULL,NULL,-8000000,8000000,0,'blank','applied',89,NULL,NULL,'fill',5,NULL,'edge','part',NULL,NULL,'no','documented by the maker','may go',14,18,'In front, where the cement was pared back.',734624,734654,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(55,'cfab1701-8173-5080-af3c-5cdb3d6e679c','2026-11-02',1,15,'L15a',8,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,'unknown','analysed','undecided',14,4,NULL,635523,683368,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(56,'c7c95cf1-951b-5168-bf3b-5c384f1c45f6','2026-11-02',1,15,'L15b',15,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706165,706225,706226,710973,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(57,'407f9772-6fe3-5981-895f-76510936b0cd','2026-11-02',1,15,'L15c',18,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',2,NULL,'face','whole',NULL,NULL,NULL,'analysed','may go',14,18,'Brown, brittle, smells sharp when warmed.',710974,714687,719528,719892,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(58,'42742c73-d1f8-5b8b-83e1-f3c67d746374','2026-11-02',1,16,'L16a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,726232,726234,0,0,0);
INSERT INTO layer VALUES(59,'fa047829-9e79-5b1a-a13f-14970ccdd116','2026-11-02',1,16,'L16b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,3,NULL,682152,682214,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(60,'71b6d1c0-124b-54f5-a6b7-beae7bc59722','2026-11-02',1,16,'L16c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(61,'dfae3167-1121-5cab-a062-bebf7087b0df','2026-11-02',1,16,'L16d',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',3,'A','face','whole','10 % w/v','acetone','no','documented by the maker',NULL,NULL,15,NULL,726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(62,'32798248-0b3b-5e6f-81be-bb0e051b60c7','2026-11-02',1,16,'L16e',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',4,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,15,NULL,726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(63,'5b123a07-8dd0-5395-9dbc-363597ce318e','2026-11-02',1,16,'L16f',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',5,'B','face','whole','10 % w/v','acetone','no','documented by the maker',NULL,NULL,15,NULL,726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(64,'ca45d795-175d-5b20-b396-22a45cb1f954','2026-11-02',1,16,'L16g',43,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',6,'A','face','whole','22 % w/v, two coats','acetone','yes','documented by the maker','keep',14,18,'Dry six weeks.',734574,734575,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(65,'0febbf0e-f6c6-52ee-a9cc-ce957f3599ee','2026-11-02',1,16,'L16h',44,NULL,NULL,-8000000,8000000,0,'blank','applied',77,NULL,NULL,'adhesive',7,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,18,NULL,734617,734617,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(66,'04dc03f6-ce81-5eba-b8f7-cd9089ae1f71','2026-11-02',1,16,'L16i',43,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',8,'B','face','whole','22 % w/v, two coats','acetone','yes','documented by the maker','keep',14,18,'Dry six weeks.',734574,734575,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(67,'935634b8-73f5-5d22-80ab-9b57c79bfaa3','2026-11-02',1,16,'L16j',45,NULL,NULL,-8000000,8000000,0,'blank','applied',89,NULL,NULL,'fill',9,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,18,NULL,734624,734654,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(68,'37f7781b-3405-5aa4-828f-f98c0fff28e3','2026-11-02',1,17,'L17a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,726232,726234,0,0,0);
INSERT INTO layer VALUES(69,'53b8cd45-1d6e-5488-88cc-3c42a7575e49','2026-11-02',1,17,'L17b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,3,NULL,682152,682214,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(70,'05c7fbf8-30ab-5997-b6b8-17a112fdc7a9','2026-11-02',1,17,'L17c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(71,'a78a6caa-81ee-5481-a062-597f5f642941','2026-11-02',1,17,'L17d',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',3,'A','face','unknown','10 % w/v','acetone','no','documented by the maker',NULL,NULL,15,'The report describes it; in 2012 nobody found it on this side.',726238,726238,20000000,20000000,726238,734554,0,0,0);
INSERT INTO layer VALUES(72,'39c1d804-2faf-503d-ba04-e59eb9a033a1','2026-11-02',1,17,'L17e',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',4,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,15,NULL,726238,726238,734555,734571,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(73,'0d181a2c-81b4-53ae-8696-ac8d67aa3a9b','2026-11-02',1,17,'L17f',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',5,'B','face','whole','10 % w/v','acetone','no','documented by the maker',NULL,NULL,15,NULL,726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(74,'36373797-3f09-55e8-a418-14834c2fd2e4','2026-11-02',1,17,'L17g',43,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',6,'A','face','whole','22 % w/v, two coats','acetone','yes','documented by the maker','keep',14,18,'Over the pulled patch too.',734574,734575,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(75,'a5c3f69d-2470-59ad-bfd2-53fa779e1bb2','2026-11-02',1,17,'L17h',44,NULL,NULL,-8000000,8000000,0,'blank','applied',77,NULL,NULL,'adhesive',7,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,18,NULL,734617,734617,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(76,'5ea759d8-5721-5356-8885-aa591418b741','2026-11-02',1,17,'L17i',43,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',8,'B','face','whole','22 % w/v, two coats','acetone','yes','documented by the maker','keep',14,18,NULL,734574,734575,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(77,'09f10559-1c94-5c0c-b2f7-791182de8636','2026-11-02',1,17,'L17j',45,NULL,NULL,-8000000,8000000,0,'blank','applied',89,NULL,NULL,'fill',9,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,18,NULL,734624,734654,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(78,'89135add-3c87-5a91-b22d-d749518c35e6','2026-11-02',1,18,'L18a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,726232,726234,0,0,0);
INSERT INTO layer VALUES(79,'f7ef2dc9-d70f-5b4d-bc8c-9888eea85da5','2026-11-02',1,18,'L18b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,3,NULL,682152,682214,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(80,'af4f26b0-32a4-5abf-917a-1b2bfee86114','2026-11-02',1,18,'L18c',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',2,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,726232,726234,0,0,0);
INSERT INTO layer VALUES(81,'c40f8d33-4285-513c-956f-eceab20332b2','2026-11-02',1,18,'L18d',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',3,'A','face','whole','10 % w/v','acetone','no','documented by the maker','keep',14,15,'Same day, same hands as J17: read J17 before trusting it.',726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(82,'e1bfa85c-0887-558f-94ac-5fe9c778f00a','2026-11-02',1,18,'L18e',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',4,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(83,'1b0c15f3-892c-5ee6-9b73-fb0d687ed384','2026-11-02',1,18,'L18f',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',5,'B','face','whole','10 % w/v','acetone','no','documented by the maker','keep',14,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(84,'ca2274f5-4ea1-5afe-ae56-ca91fd1542ac','2026-11-02',1,19,'L19a',8,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,'unknown','documented later','undecided',NULL,4,NULL,635523,683368,718126,718156,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(85,'713a589b-954d-57b1-98a7-3c9d45c44ba9','2026-11-02',1,19,'L19b',25,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,12,'Barrier: not recorded.',718126,718156,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(86,'51fa3395-032a-586e-9101-17ab0e863a37','2026-11-02',1,20,'L20a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',29,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(87,'73fe0da7-9983-5e5a-91d1-6b172eb70b71','2026-11-02',1,20,'L20b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,3,'A brown ring on the seat shows where the urn stood.',682152,682214,708571,710031,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(88,'82b8f679-795a-5b46-951f-6e994be2c5df','2026-11-02',1,21,'L21a',6,NULL,NULL,-8000000,8000000,0,'blank','applied',34,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',14,3,NULL,682152,682214,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(89,'9395e3f6-e643-5122-93fe-a9777e5633d2','2026-11-02',1,21,'L21b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(90,'3959e9a2-3d20-5673-a241-3dff0aadcb41','2026-11-02',1,22,'L22a',2,NULL,NULL,-8000000,8000000,0,'blank','maker',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(91,'73cb269d-5301-58a5-8d8e-1f1e2241cdbe','2026-11-02',1,22,'L22b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(92,'dfaf85b7-d090-5bd8-b870-45f56555cbc9','2026-11-02',1,23,'L23a',2,NULL,NULL,-8000000,8000000,0,'blank','maker',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',14,2,NULL,635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(93,'178c3a60-9dac-51dc-8d03-9efaaaca7a3a','2026-11-02',1,23,'L23b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'cement','pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented later',NULL,NULL,8,'The ledger has only "cement" for this mask.',706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(94,'154b6b02-ed02-5a83-a582-2ab5a7bddb48','2026-11-02',1,24,'L24a',9,NULL,NULL,-8000000,8000000,0,'blank','applied',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','undecided',NULL,18,'Redder and harder than at the other masks.',681908,682273,20000000,20000000,20000000,20000000,1,0,0);
INSERT INTO layer VALUES(95,'4ae98d4b-de65-5936-9ebd-185b51cb770c','2026-11-02',1,24,'L24b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(96,'1380bdfd-0e94-5788-8872-43ae5ef2f5bd','2026-11-02',1,25,'L25a',2,NULL,NULL,-8000000,8000000,0,'blank','maker',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'analysed','keep',14,2,NULL,635523,635887,734673,734673,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(97,'a17feb4e-f368-5782-a516-02dbc68bde7d','2026-11-02',1,25,'L25b',14,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'pointing',1,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706178,706178,20000000,20000000,734673,734673,0,0,0);
INSERT INTO layer VALUES(98,'a9e497f5-270f-581d-9640-240a1537e9bb','2026-11-02',1,26,'L26a',3,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','unknown',NULL,NULL,NULL,'documented by the maker','keep',NULL,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(99,'70d7420b-21b6-558a-94d7-c89f60ae2b15','2026-11-02',1,27,'L27a',3,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(100,'f95ed239-9eee-5f4f-9218-6b2a2522de21','2026-11-02',1,27,'L27b',NULL,'1741/1931','1741/1931',635523,705282,0,'edtf','arisen',111,NULL,NULL,'corrosion',1,NULL,'face','unknown',NULL,NULL,NULL,'inferred',NULL,NULL,7,'Brown run below the mask.',635523,705282,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(101,'78efefeb-c5df-51d7-8179-a019d671b8ce','2026-11-02',1,28,'L28a',3,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,2,NULL,635523,635887,20000000,20000000,734673,734673,0,0,0);
INSERT INTO layer VALUES(102,'89d66dda-2300-5046-add9-ae21278a2f8e','2026-11-02',1,28,'L28b',NULL,'before 2012','../2011',-9000000,734502,0,'words','arisen',111,NULL,NULL,'corrosion',1,'B','face','whole',NULL,NULL,NULL,'analysed','may go',16,18,NULL,635523,734502,734673,734673,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(103,'617184d1-e641-592b-a523-3e885a5674d3','2026-11-02',1,29,'L29a',3,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',16,2,NULL,635523,635887,734673,734673,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(104,'14922477-f08d-562a-9693-3e6b49525e9a','2026-11-02',1,30,'L30a',2,NULL,NULL,-8000000,8000000,0,'blank','maker',41,NULL,NULL,'mastic',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(105,'113dab02-a953-5691-ba67-e6242337b90b','2026-11-02',1,31,'L31a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,2,NULL,635523,635887,20000000,20000000,682060,682151,0,0,0);
INSERT INTO layer VALUES(106,'94229814-171e-50b8-adca-4c04a3af971c','2026-11-02',1,31,'L31b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',39,NULL,NULL,'lead run',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,3,'"1 Cramp saved & new leaded."',682152,682214,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(107,'9ca46046-dd02-5690-814d-b925d4d002aa','2026-11-02',1,32,'L32a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,2,NULL,635523,635887,20000000,20000000,682060,682151,0,0,0);
INSERT INTO layer VALUES(108,'283b227a-acb0-5dbe-8501-1269b1b374a3','2026-11-02',1,32,'L32b',6,NULL,NULL,-8000000,8000000,0,'blank','applied',39,NULL,NULL,'lead run',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,3,NULL,682152,682214,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(109,'f766a1a7-b36e-5133-995f-e03c28335917','2026-11-02',1,33,'L33a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,2,NULL,635523,635887,20000000,20000000,718138,718138,0,0,0);
INSERT INTO layer VALUES(110,'99223a15-e933-5cf1-9ab4-f7d41a9930e9','2026-11-02',1,33,'L33b',24,NULL,NULL,-8000000,8000000,0,'blank','applied',79,NULL,NULL,'fill',1,'A','core','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,12,'Packed into the empty socket.',718140,718140,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(111,'0a3760f1-0e84-511d-a229-a8b1d96aa6b1','2026-11-02',1,34,'L34a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(112,'43b862b6-03e0-54e1-92cd-5594ec806f10','2026-11-02',1,34,'L34b',NULL,'before 1932','../1931',-9000000,705282,0,'words','arisen',111,NULL,NULL,'corrosion',1,'B','face','whole',NULL,NULL,NULL,'inferred','may go',NULL,7,NULL,635523,705282,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(113,'37ca7004-aeba-56f1-adc6-421b40d3bcae','2026-11-02',1,35,'L35a',1,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',14,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(114,'43cc67af-1c3a-519c-b6f3-ed4d3f65bed3','2026-11-02',1,36,'L36a',1,'[1741,1868]','[1741,1868]',635523,682273,0,'edtf','maker',39,NULL,NULL,'lead run',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',14,17,'Run again in 1868 if the dolphin was truly off. The plate cannot tell one lead from another.',635523,682273,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(115,'2b6c01ec-bc71-5271-8980-517de478901b','2026-11-02',1,36,'L36b',NULL,'before 2012','../2011',-9000000,734502,0,'words','arisen',111,NULL,NULL,'corrosion',1,'B','face','part',NULL,NULL,NULL,'inferred',NULL,NULL,17,'The dark halo in plate 6.',635523,734502,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(116,'63c1fa56-9754-514a-95d2-95a127f8921f','2026-11-02',1,37,'L37a',7,NULL,NULL,-8000000,8000000,0,'blank','applied',38,NULL,NULL,'grout',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,3,NULL,682152,682214,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(117,'82c5e52f-7f35-56c6-8f02-eb72aeabfe27','2026-11-02',1,38,'L38a',7,NULL,NULL,-8000000,8000000,0,'blank','applied',38,NULL,NULL,'grout',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,3,NULL,682152,682214,714873,714876,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(118,'f8a6e1d9-23c4-5dd8-b826-a7d0fa020d87','2026-11-02',1,38,'L38b',20,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'grout',1,NULL,'face','part',NULL,NULL,NULL,'documented by the maker','may go',NULL,11,NULL,714877,714888,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(119,'093857b0-1233-5a3a-81b2-eb555939336c','2026-11-02',1,38,'L38c',NULL,'1868/1989','1868/1989',681908,726467,0,'edtf','arisen',111,NULL,NULL,'corrosion',2,'B','face','whole',NULL,NULL,NULL,'inferred','may go',NULL,15,NULL,681908,726467,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(120,'76c1b103-8c8d-5405-8895-3855a8eedfcd','2026-11-02',1,39,'L39a',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,12,NULL,718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(121,'3e17c633-701e-5f69-b59f-2e712e5eff7a','2026-11-02',1,40,'L40a',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,12,NULL,718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(122,'6310afcb-0bba-5b7d-a036-287a2d6ed936','2026-11-02',1,41,'L41a',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,12,NULL,718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(123,'a4999cc0-7759-53e7-9f0c-5ea121308ad0','2026-11-02',1,42,'L42a',23,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,12,NULL,718139,718139,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(124,'e4a83040-e7f2-53a4-aab8-3c4f31c1e980','2026-11-02',1,43,'L43a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,'Barrier in the hole: recorded as none.',726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(125,'c539a040-57b9-5b2c-9451-31fe48d9e6ae','2026-11-02',1,44,'L44a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,15,NULL,726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer VALUES(126,'e90fb7b0-10d4-533c-8916-6a88a773dc00','2026-11-02',1,44,'L44b',44,NULL,NULL,-8000000,8000000,0,'blank','applied',77,NULL,NULL,'adhesive',1,'A','face','whole',NULL,NULL,NULL,'documented by the maker','may go',14,18,'Holds a brass sleeve in the stone; the rod slides in it.',734617,734617,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(127,'fcf0f84d-58bb-5ebe-9e35-14297ccf50eb','2026-11-02',1,45,'L45a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,'Barrier in the hole: not recorded.',726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(128,'b28a32fd-5d5c-53ef-9666-d24cb826a962','2026-11-02',1,46,'L46a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,'Barrier in the hole: not recorded.',726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(129,'5e9d611b-22aa-52fb-bb53-e3baad2d8517','2026-11-02',1,47,'L47a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,15,NULL,726238,726238,734555,734571,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(130,'3e61ca12-0501-5d0f-b6ad-c84376216947','2026-11-02',1,48,'L48a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(131,'76a5d388-d7b7-5db5-ba96-be06aba13717','2026-11-02',1,47,'L47b',44,NULL,NULL,-8000000,8000000,0,'blank','applied',77,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',14,18,NULL,734617,734617,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(132,'c9ff5ac4-8249-5091-a026-9332f4a5e15f','2026-11-02',1,49,'L49a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(133,'252bc972-d089-5491-9819-5aa7552b1e11','2026-11-02',1,50,'L50a',33,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,15,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(134,'91924031-c66b-5e58-b082-a1db9e344c8a','2026-11-02',1,51,'L51a',NULL,'between 1741 and 2011','1741/2011',635523,734502,0,'words','applied',NULL,NULL,NULL,'adhesive',0,NULL,'face','unknown',NULL,NULL,'unknown','unknown','undecided',14,17,'A thin grey line beside the pin in plate 6: not lead.',635523,734414,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(135,'9a27ee73-0214-52d0-a80d-14ed6c3515ec','2026-11-02',1,53,'L53a',NULL,'between 1741 and 2011','1741/2011',635523,734502,0,'words','applied',NULL,NULL,NULL,'adhesive',0,NULL,'face','unknown',NULL,NULL,'unknown','unknown','undecided',14,17,NULL,635523,734502,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(136,'93d52468-c50f-5802-9394-58448f5ac9c4','2026-11-02',1,54,'L54a',NULL,'between 1868 and 1989','1868/1989',681908,726467,0,'words','applied',NULL,NULL,'cement','fill',0,'A','edge','whole',NULL,NULL,NULL,'inferred','may go',NULL,18,'Grey stopping in the mouth of the hole. Which cement is not established.',681908,726467,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(137,'c2dd1b1e-5cd3-5b33-b336-169a079f9e4a','2026-11-02',1,55,'LS1a',NULL,'1868/1934','1868/1934',681908,706378,0,'edtf','arisen',109,NULL,NULL,'crust',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','may go',NULL,8,NULL,681908,706164,20000000,20000000,706134,706164,0,0,0);
INSERT INTO layer VALUES(138,'21ca3520-de8d-58bb-8c1c-5caadca70c47','2026-11-02',1,NULL,'LS1b',17,NULL,NULL,-8000000,8000000,0,'blank','applied',46,NULL,NULL,'coating',1,NULL,NULL,'part',NULL,NULL,NULL,'inferred','may go',14,10,'Black below the water line in the negatives; which half, and whether in the seam, they do not show.',706744,714687,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(139,'025690a5-7f9f-54c6-b60f-1381c3fe405c','2026-11-02',1,55,'LS1c',NULL,'1934/1958','1934/1958',706014,715144,0,'edtf','arisen',109,NULL,NULL,'crust',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','may go',NULL,13,NULL,706014,715144,721628,721658,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(140,'0832d4ba-8f6f-54f7-88be-50f9532f9157','2026-11-02',1,56,'LS2a',NULL,'before 1934','../1933',-9000000,706013,0,'words','arisen',119,NULL,NULL,'biofilm',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','may go',NULL,7,NULL,635523,706013,20000000,20000000,706104,706133,0,0,0);
INSERT INTO layer VALUES(141,'ec96e676-cb03-5e31-8f01-8215ad65a24d','2026-11-02',1,56,'LS2b',10,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','undecided',NULL,4,NULL,681908,682273,706104,706133,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(142,'9b5f4b42-a2f0-5710-abb3-421a61ca6502','2026-11-02',1,56,'LS2c',15,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'fill',2,NULL,NULL,'spots',NULL,NULL,NULL,'documented by the maker','may go',14,8,NULL,706165,706225,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(143,'7bb35aba-582f-5162-88e9-89f163d390a3','2026-11-02',1,56,'LS2d',24,NULL,NULL,-8000000,8000000,0,'blank','applied',79,NULL,NULL,'fill',3,NULL,NULL,'spots',NULL,NULL,NULL,'documented by the maker','may go',NULL,12,NULL,718140,718140,726103,734502,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(144,'a9348f02-27cc-5b24-a764-534f1e5f99af','2026-11-02',1,NULL,'LM7a',26,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,NULL,'consolidant',4,NULL,NULL,'unknown',NULL,NULL,'unknown','unknown','undecided',14,13,'Card says silane, invoice acrylic in toluene. It ran down the face and into the gap, or it did not.',721567,721627,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(145,'f8f29dff-50b2-578a-8938-30977d3c3e12','2026-11-02',1,56,'LS2e',35,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',5,NULL,NULL,'spots',NULL,'water',NULL,'documented by the maker','may go',14,15,NULL,726254,726283,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(146,'70c20e15-e3be-500f-9777-0a681c16ff40','2026-11-02',1,69,'LM7b',NULL,'1934/1976','1934/1976',706014,721719,0,'edtf','arisen',116,NULL,NULL,'salts',0,NULL,NULL,'unknown',NULL,NULL,NULL,'inferred','may go',NULL,13,NULL,706014,721719,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(147,'faffbde3-3975-58f7-bcd7-2625bd8aa1cc','2026-11-02',1,57,'LS3a',NULL,'1868/1934','1868/1934',681908,706378,0,'edtf','arisen',109,NULL,NULL,'crust',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','may go',NULL,8,NULL,681908,706164,20000000,20000000,706134,706164,0,0,0);
INSERT INTO layer VALUES(148,'8eeed298-2eca-5964-879b-c7a4a4d68568','2026-11-02',1,57,'LS3b',NULL,'1934/1958','1934/1958',706014,715144,0,'edtf','arisen',109,NULL,NULL,'crust',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','may go',NULL,13,NULL,706014,715144,721628,721658,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(149,'2d30f1bc-5b08-5d72-b952-5f31be917432','2026-11-02',1,58,'LS4a',NULL,'1934/1957','1934/1957',706014,714779,0,'edtf','arisen',116,NULL,NULL,'salts',0,NULL,NULL,'part',NULL,NULL,NULL,'analysed','may go',14,10,'From the caustic washing. Brushed off many times, back each spring.',706014,714687,721598,721688,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(150,'009a8c31-5caf-5d7b-ac39-4651cc2ba44b','2026-11-02',1,67,'LM5a',11,NULL,NULL,-8000000,8000000,0,'blank','arisen',116,NULL,NULL,'salts',0,NULL,NULL,'unknown',NULL,NULL,NULL,'inferred','may go',14,18,'The store from which the bloom on S04 is fed.',706104,706133,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(151,'e43cf349-3242-5a10-ad36-8af38272dec6','2026-11-02',1,59,'LS5a',10,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','undecided',NULL,4,NULL,681908,682273,706104,706133,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(152,'d1221d06-8437-5038-aa55-ba367b9f3b90','2026-11-02',1,59,'LS5b',15,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'fill',1,NULL,NULL,'spots',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706165,706225,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(153,'04d0ef77-60fa-57ca-a189-da5470c74e47','2026-11-02',1,59,'LS5c',35,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',2,NULL,NULL,'spots',NULL,'water',NULL,'documented by the maker','may go',NULL,15,NULL,726254,726283,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(154,'2c462477-f22f-53d5-877a-3ec55ce5a280','2026-11-02',1,60,'LS6a',NULL,'before 1932','../1931',-9000000,705282,0,'words','arisen',110,NULL,NULL,'crust',0,NULL,NULL,'part',NULL,NULL,NULL,'inferred','may go',NULL,7,'Under the belly, out of the rain.',635523,705282,706104,706133,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(155,'92453b66-986b-54b9-9488-f9bdc6937fd1','2026-11-02',1,60,'LS6b',10,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','undecided',NULL,4,NULL,681908,682273,706104,706133,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(156,'c09d8539-f61d-54e5-8837-7cbed2b35fe1','2026-11-02',1,61,'LS7a',4,NULL,NULL,-8000000,8000000,0,'blank','maker',104,NULL,NULL,'gilding',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',14,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(157,'4a57678f-9b35-5908-921e-3b52755d2d9b','2026-11-02',1,61,'LS7b',4,NULL,NULL,-8000000,8000000,0,'blank','maker',103,NULL,NULL,'gilding',1,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','keep',14,2,'Left in six flutes of nineteen.',635523,635887,635523,692134,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(158,'ef81e718-039b-56d6-832e-df0c295a3cf3','2026-11-02',1,61,'LS7c',15,NULL,NULL,-8000000,8000000,0,'blank','applied',35,NULL,NULL,'fill',2,NULL,NULL,'spots',NULL,NULL,NULL,'documented by the maker','may go',NULL,8,NULL,706165,706225,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(159,'56b22264-fb0a-5752-b115-f28f4a61f043','2026-11-02',1,61,'LS7d',35,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',3,NULL,NULL,'spots',NULL,'water',NULL,'documented by the maker','may go',NULL,15,NULL,726254,726283,726254,734868,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(160,'0c476a6c-2eab-5ea1-a265-ea737a49d711','2026-11-02',1,61,'LS7e',51,NULL,NULL,-8000000,8000000,0,'blank','applied',88,NULL,NULL,'temporary consolidant',4,NULL,NULL,'part','melt',NULL,'yes','documented by the maker','may go',17,NULL,'Six gilded flutes only.',739908,739908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(161,'3a1464c9-7c82-5e63-a398-bbaeffbf233d','2026-11-02',1,61,'LS7f',51,NULL,NULL,-8000000,8000000,0,'blank','applied',105,NULL,NULL,'facing',5,NULL,NULL,'part',NULL,NULL,NULL,'documented by the maker','may go',17,NULL,'Held by methyl cellulose; temporary.',739908,739908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(162,'f9358744-1824-559d-bd8f-c33a506fb3ab','2026-11-02',1,62,'LS8a',4,NULL,NULL,-8000000,8000000,0,'blank','maker',122,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',16,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(163,'d047ad7e-5017-5d85-b4a3-bf84ec683ae0','2026-11-02',1,62,'LS8b',16,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,8,NULL,706257,706286,734655,734715,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(164,'ec979f57-7463-5c4d-8959-97403bce3e70','2026-11-02',1,62,'LS8c',36,NULL,NULL,-8000000,8000000,0,'blank','applied',64,NULL,NULL,'coating',2,NULL,NULL,'whole',NULL,'toluene',NULL,'documented by the maker','may go',16,15,NULL,726254,726283,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(165,'6102aafe-8ecc-586f-a2aa-e4be7cd12f30','2026-11-02',1,62,'LS8d',47,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,18,NULL,734685,734715,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(166,'761c1a2c-6700-5723-b525-3eafa0dc3278','2026-11-02',1,63,'LS9a',4,NULL,NULL,-8000000,8000000,0,'blank','maker',122,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',16,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(167,'0d5de569-8738-5f8c-bb1d-cd80fc40e73b','2026-11-02',1,63,'LS9b',16,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,8,NULL,706257,706286,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(168,'503d1b5c-4213-5110-b7a7-10e40d1f00a7','2026-11-02',1,63,'LS9c',36,NULL,NULL,-8000000,8000000,0,'blank','applied',64,NULL,NULL,'coating',2,NULL,NULL,'whole',NULL,'toluene',NULL,'documented by the maker','may go',16,15,NULL,726254,726283,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(169,'918bbd88-178d-5046-bf07-88e1d99df596','2026-11-02',1,63,'LS9d',47,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,18,NULL,734685,734715,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(170,'1bc9ea7a-c89f-5fd9-a42d-234f04f4c8e9','2026-11-02',1,64,'LS10a',9,NULL,NULL,-8000000,8000000,0,'blank','maker',NULL,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'unknown','undecided',16,18,'Greenish black; made to match in a hurry.',681908,682273,20000000,20000000,20000000,20000000,1,0,0);
INSERT INTO layer VALUES(171,'13d5007a-8529-5f3c-96b4-5ca478eb1ed4','2026-11-02',1,64,'LS10b',16,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,8,NULL,706257,706286,734655,734715,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(172,'c25e1e8c-c698-5b91-a0a1-865da565fe7e','2026-11-02',1,64,'LS10c',36,NULL,NULL,-8000000,8000000,0,'blank','applied',64,NULL,NULL,'coating',2,NULL,NULL,'whole',NULL,'toluene',NULL,'documented by the maker','may go',16,15,NULL,726254,726283,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(173,'dafd9f81-f5d5-5654-9891-5bc1deec2c30','2026-11-02',1,64,'LS10d',47,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,18,NULL,734685,734715,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(174,'1d5af942-2a3f-5697-85ae-ab8d889d4acc','2026-11-02',1,65,'LS11a',4,NULL,NULL,-8000000,8000000,0,'blank','maker',122,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',16,2,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(175,'b2196f25-ad1c-5e0a-93dd-14ad0c67d0b0','2026-11-02',1,65,'LS11b',16,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,8,NULL,706257,706286,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(176,'450df7e9-ab01-5695-8b8f-a67eea953657','2026-11-02',1,65,'LS11c',36,NULL,NULL,-8000000,8000000,0,'blank','applied',64,NULL,NULL,'coating',2,NULL,NULL,'whole',NULL,'toluene',NULL,'documented by the maker','may go',16,15,NULL,726254,726283,20000000,20000000,734655,734715,0,0,0);
INSERT INTO layer VALUES(177,'f46eca84-dbde-5f0e-b53b-e9a816dc6525','2026-11-02',1,65,'LS11d',47,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,18,NULL,734685,734715,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(178,'6bd050ce-bd8c-55e5-9392-a90b0484f3d4','2026-11-02',1,66,'LS12a',10,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','undecided',NULL,4,NULL,681908,682273,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(179,'aba1b2c5-9b76-511c-ab46-22fecd1d3f00','2026-11-02',1,68,'LM6a',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'consolidant',0,NULL,NULL,'part','10 % w/v','acetone','no','inferred','undecided',14,18,'What the thin barrier lost into the stone.',726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(180,'b7ae0320-9f70-5280-8c95-4814b797690e','2026-11-02',1,70,'LM12a',8,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'consolidant',0,NULL,NULL,'part',NULL,NULL,'unknown','analysed','undecided',14,18,'Purple stain 3 mm deep.',635523,683368,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(181,'00b12a92-c9c9-50e5-bbc6-9c189405729e','2026-11-02',1,71,'LM13a',32,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'consolidant',0,NULL,NULL,'spots','10 % w/v','acetone','no','inferred',NULL,NULL,18,NULL,726238,726238,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(182,'4108f2a8-4a92-5853-9dfc-806b15e98987','2026-11-02',1,72,'LC1a',NULL,'1741','1741',635523,635887,0,'edtf','maker',108,NULL,NULL,'deposit',0,NULL,NULL,'part',NULL,NULL,NULL,'documented later','keep',16,18,'Burnt clay and hair, not dug out.',635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(183,'0d950a20-4527-5f73-a921-ec51eae6b98b','2026-11-02',1,73,'LC2a',21,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'fill',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,11,'With rag.',714900,714930,734406,734406,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(184,'e1781dc9-ea87-5397-a9d8-3a905779246f','2026-11-02',1,74,'LC3a',NULL,'1741','1741',635523,635887,0,'edtf','maker',108,NULL,NULL,'deposit',0,NULL,NULL,'part',NULL,NULL,NULL,'documented later','keep',16,18,NULL,635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(185,'7ccd7f36-66c9-5c06-9249-d4782b04bb12','2026-11-02',1,75,'LC4a',NULL,'1967/2011','1967/2011',718067,734502,0,'edtf','arisen',111,NULL,NULL,'corrosion',0,NULL,NULL,'part',NULL,NULL,NULL,'inferred',NULL,NULL,17,NULL,718067,734502,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(186,'2be5f43a-3dc4-51f9-a7a0-af4e255c0b48','2026-11-02',3,76,'L1',52,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,'warm water',NULL,'documented by the maker','undecided',13,23,NULL,691739,691828,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(187,'f5fb3f2e-8ed1-501f-8f65-45c1788bcecd','2026-11-02',3,77,'L2',52,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,'warm water',NULL,'documented by the maker',NULL,NULL,23,NULL,691739,691828,714780,715144,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(188,'b9ae204b-2b97-560a-8fc0-493f49789afb','2026-11-02',3,78,'L3',52,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,'warm water',NULL,'documented by the maker','undecided',NULL,23,NULL,691739,691828,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(189,'00f7e057-4dd3-5e52-b760-e577e453c578','2026-11-02',3,79,'L4',52,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,'warm water',NULL,'documented by the maker',NULL,NULL,23,NULL,691739,691828,692135,696516,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(190,'8e6005c1-d268-5469-9a39-13042c0ba7b7','2026-11-02',3,79,'L5',54,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'gum','adhesive',1,NULL,'face','unknown',NULL,NULL,NULL,'documented by the maker',NULL,NULL,23,'"Gum" in Marrable''s hand may be gum arabic, or glue.',696517,697977,696517,698708,696517,727245,0,0,0);
INSERT INTO layer VALUES(191,'1f2dca0c-6c08-5a5e-94e3-370627149568','2026-11-02',3,80,'L6',53,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'fill',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,23,NULL,691739,691828,20000000,20000000,727267,727267,0,0,0);
INSERT INTO layer VALUES(192,'18e91edf-1724-58f8-b1bb-33cdb32a25cb','2026-11-02',3,81,'L7',53,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',0,NULL,NULL,'part',NULL,NULL,NULL,'documented later',NULL,NULL,44,'Ran 20 mm over the glaze.',691739,691828,20000000,20000000,727245,727263,0,0,0);
INSERT INTO layer VALUES(193,'48b788ce-133b-5cc3-8e36-e4b0effea2d9','2026-11-02',3,NULL,'L8',55,NULL,NULL,-8000000,8000000,0,'blank','applied',84,NULL,NULL,'wax',1,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','may go',NULL,44,'On both sides or on the front only.',704553,708204,727245,727263,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(194,'c7f99db0-3ff6-5ac6-b289-c301e4dbc4c4','2026-11-02',3,77,'L9',56,NULL,NULL,-8000000,8000000,0,'blank','applied',69,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',13,28,'Over what was left of the glue.',715204,715234,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(195,'a0bc5f02-1e95-5288-9a1c-e9ed1069ba76','2026-11-02',3,80,'L10',59,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',1,NULL,NULL,'whole','10 % w/v','acetone','yes','documented by the maker','keep',13,44,NULL,727289,727318,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(196,'2c0e4151-2d11-56b7-ad21-4fa2f1917d99','2026-11-02',3,80,'L11',59,NULL,NULL,-8000000,8000000,0,'blank','applied',90,NULL,NULL,'fill',2,NULL,NULL,'whole',NULL,NULL,'yes','documented by the maker','may go',13,44,NULL,727289,727318,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(197,'dad77c5d-3b4f-5fbc-8fa4-a3b8ecb81a03','2026-11-02',3,81,'L12',59,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',2,NULL,NULL,'part',NULL,'water',NULL,'documented by the maker','may go',13,44,'On the fill only.',727289,727318,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(198,'0820dcd3-f339-561c-8375-3ae47bfa4325','2026-11-02',3,82,'L13',NULL,'before 1992','../1991',-9000000,727197,0,'words','arisen',121,NULL,NULL,'deposit',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',13,44,'Kitchen soot, left as found.',608495,727197,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(199,'e13e1c6b-28d3-54d5-b7ce-16e99f682cf3','2026-11-02',4,83,'L1',61,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,29,'"Let go in hot water."',646115,697612,20000000,20000000,720204,720204,0,0,0);
INSERT INTO layer VALUES(200,'96c232e5-0420-5a21-9f54-ef1a41ba612d','2026-11-02',4,84,'L2',61,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','part',NULL,NULL,NULL,'documented later',NULL,NULL,29,'"Brown, would not melt away."',646115,697612,720204,720204,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(201,'02773d61-56b4-59c9-8e01-22683ee97aca','2026-11-02',4,83,'L3',63,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,29,'Barrier: not recorded.',720205,720205,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(202,'ece9f6e2-2c33-586d-b134-e0970721e67e','2026-11-02',4,84,'L4',63,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,29,'Yellow as honey.',720205,720205,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(203,'bb13a47f-b3ed-57e1-bd82-3362fa2308d3','2026-11-02',4,87,'L5',63,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,29,NULL,720205,720205,720259,722814,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(204,'a5154198-2301-5c63-826d-590dfacf55c0','2026-11-02',4,88,'L6',63,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','unknown',NULL,NULL,NULL,'inferred',NULL,NULL,29,NULL,720205,720205,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(205,'ba714dd6-a53c-5c6c-b662-bc0a7f9b37c3','2026-11-02',4,89,'L7',63,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',0,NULL,'face','unknown',NULL,NULL,NULL,'inferred',NULL,NULL,29,NULL,720205,720205,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(206,'c95164e8-03af-5a3f-aefe-a2bdc15d53ef','2026-11-02',4,87,'L8',64,NULL,NULL,-8000000,8000000,0,'blank','applied',80,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'inferred','may go',NULL,35,NULL,722815,726467,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(207,'f6c6b14a-353a-5d5f-9859-2f799a63aa0c','2026-11-02',4,86,'L9',66,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',0,'B','edge','spots','50 % w/v','acetone',NULL,'documented by the maker','may go',13,35,'Two drops, so that the hand can be drawn out.',731447,731447,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(208,'c812f39c-f38f-5ef0-bd3b-beece0c64502','2026-11-02',4,90,'L10',67,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',0,NULL,NULL,'spots',NULL,'water',NULL,'documented by the maker','may go',13,35,NULL,731428,731458,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(209,'b881d1bb-b50c-5d46-bd9a-ca6b0cb0bdb2','2026-11-02',4,85,'L11',NULL,'[1911..1940]','[1911..1940]',697613,708570,0,'edtf','applied',52,NULL,NULL,'adhesive',0,'A','face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,28,'A brown stump at the wrist; the hand went to the quarry stuck and came back without.',697613,708570,20000000,20000000,710640,731410,0,0,0);
INSERT INTO layer VALUES(210,'9f543031-42c1-57d8-bccf-9588df441f67','2026-11-02',5,91,'L1',68,NULL,NULL,-8000000,8000000,0,'blank','maker',53,NULL,NULL,'adhesive',0,NULL,'face','part',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,605938,609590,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(211,'bb147ab9-4a5a-5b7c-bd28-e04bb80433a5','2026-11-02',5,92,'L2',68,NULL,NULL,-8000000,8000000,0,'blank','maker',53,NULL,NULL,'adhesive',0,NULL,'face','part',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,605938,609590,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(212,'adb17870-0d07-54a2-bad6-d2e6f75c9267','2026-11-02',5,95,'L3',70,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,NULL,695177,695207,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(213,'488f37c9-715c-59dd-8264-23ee46f73495','2026-11-02',5,96,'L4',71,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,NULL,695208,695237,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(214,'fb4106c4-2856-5bf0-8724-12e96fd7b23a','2026-11-02',5,97,'L5',71,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,NULL,695208,695237,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(215,'b990dff2-8860-5186-88e9-497e18b55445','2026-11-02',5,NULL,'L6',72,NULL,NULL,-8000000,8000000,0,'blank','applied',149,NULL,NULL,'deposit',1,NULL,NULL,'unknown',NULL,'ethanol',NULL,'analysed','may go',15,27,'The list does not say where. Found at S2 and M1 in 2015; M2 had none at three points.',701417,701446,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(216,'4fae69bb-04ee-5804-bc95-f26c01275a25','2026-11-02',5,96,'L7',73,NULL,NULL,-8000000,8000000,0,'blank','applied',87,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','may go',NULL,28,NULL,706379,715875,735658,735688,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(217,'a8c52c09-02ed-5878-bfa5-e6e19c7fd2b9','2026-11-02',5,97,'L8',73,NULL,NULL,-8000000,8000000,0,'blank','applied',87,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','may go',NULL,28,NULL,706379,715875,735658,735688,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(218,'c4f42008-9b34-5479-9358-307975fa95ce','2026-11-02',5,97,'L9',74,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'fill',3,NULL,NULL,'spots',NULL,NULL,NULL,'documented by the maker','may go',NULL,28,'In some sixty worm holes.',605938,714779,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(219,'d9b41ccb-49e2-5827-bcc2-a72d1bebbcde','2026-11-02',5,98,'L10',75,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'PVA','consolidant',2,NULL,NULL,'unknown',NULL,NULL,NULL,'documented by the maker','undecided',NULL,29,'Acetate or alcohol: the card does not say.',716241,716605,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(220,'7ddd5257-5e15-59f3-86ef-05b7c6b46615','2026-11-02',6,108,'L1',79,NULL,NULL,-8000000,8000000,0,'blank','maker',158,NULL,NULL,'paint',0,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','keep',14,38,NULL,670951,671315,670951,686656,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(221,'37a8b6a8-4ff3-5944-9056-1cc9196d4c75','2026-11-02',6,109,'L2',79,NULL,NULL,-8000000,8000000,0,'blank','maker',44,NULL,NULL,'paint',0,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','keep',14,38,'Green dress.',670951,671315,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(222,'fd860a11-0201-530f-9d75-2c09660fcd2c','2026-11-02',6,108,'L3',80,NULL,NULL,-8000000,8000000,0,'blank','applied',158,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','undecided',NULL,38,NULL,686291,686656,735354,735414,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(223,'9e21ff45-627b-5037-a3fb-1c9a8baa9d6b','2026-11-02',6,109,'L4',80,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','undecided',NULL,38,NULL,686291,686656,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(224,'58b03c2f-7191-5073-8438-97fef6efc39f','2026-11-02',6,109,'L5',81,NULL,NULL,-8000000,8000000,0,'blank','applied',46,NULL,NULL,'coating',2,NULL,NULL,'part',NULL,NULL,NULL,'analysed','may go',NULL,38,'Lower folds.',696152,703456,703092,703456,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(225,'ef88d080-d124-5729-83c7-0cc19e09d17b','2026-11-02',6,100,'L6',82,NULL,NULL,-8000000,8000000,0,'blank','applied',45,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,26,NULL,703092,703456,20000000,20000000,735477,735506,0,0,0);
INSERT INTO layer VALUES(226,'d01cfcf0-509c-55ad-b8d6-cf9427de8b72','2026-11-02',6,102,'L7',82,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,26,NULL,703092,703456,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(227,'5f2e6a35-d123-59a9-bf71-9ceadeed6dc0','2026-11-02',6,108,'L8',83,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',14,26,'Gloss.',703092,703456,735354,735414,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(228,'f330195e-3ddf-5807-93c4-e9d57a50d376','2026-11-02',6,109,'L9',83,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',14,26,'Over red lead.',703092,703456,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(229,'e4cf36ca-6e7f-52af-b62c-6fbac4f99e11','2026-11-02',6,111,'L10',84,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'fill',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','undecided',14,29,'"Eleven pints."',718645,718675,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(230,'22350042-ee76-5ac8-aa26-9704905989e4','2026-11-02',6,110,'L11',84,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'consolidant',0,NULL,NULL,'unknown',NULL,NULL,NULL,'inferred',NULL,NULL,29,'What ran from the pocket into the wood.',718645,718675,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(231,'f7fd6248-38ec-5f53-819e-b59f0059a13d','2026-11-02',6,110,'L12',85,NULL,NULL,-8000000,8000000,0,'blank','applied',160,NULL,NULL,'consolidant',1,NULL,NULL,'unknown',NULL,NULL,NULL,'documented by the maker','may go',NULL,29,'Before or after the polyester: the card does not say.',718432,719162,20000000,20000000,718432,735323,0,0,0);
INSERT INTO layer VALUES(232,'b3b8debe-37d3-501e-ad33-79ec802f5c70','2026-11-02',6,108,'L13',86,NULL,NULL,-8000000,8000000,0,'blank','applied',70,NULL,NULL,'consolidant',3,NULL,NULL,'spots','5 %','ethanol',NULL,'documented by the maker','undecided',NULL,30,NULL,722024,722115,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(233,'66106e9f-6c83-50d7-baea-ec757254186b','2026-11-02',6,100,'L14',90,NULL,NULL,-8000000,8000000,0,'blank','applied',28,NULL,NULL,'fill',1,NULL,'core','part',NULL,NULL,'yes','documented by the maker','may go',14,38,'Ground cork in acrylic resin.',735477,735506,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(234,'a60bb77a-5923-5263-9f7e-57fdc583cfce','2026-11-02',6,105,'L15',NULL,'before 2014','../2013',-9000000,735233,0,'words','arisen',111,NULL,NULL,'corrosion',0,'B','face','whole',NULL,NULL,NULL,'inferred','may go',NULL,38,NULL,670951,735233,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(235,'1ce7655c-9c41-558d-b0ff-d0ddb90e7d7c','2026-11-02',7,112,'L1',91,NULL,NULL,-8000000,8000000,0,'blank','maker',153,NULL,NULL,'solder',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,688483,688847,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(236,'af96be42-8af9-5c37-9eaa-f4f657b2e742','2026-11-02',7,114,'L2',91,NULL,NULL,-8000000,8000000,0,'blank','maker',153,NULL,NULL,'solder',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,688483,688847,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(237,'4c22c956-0313-5830-bcb3-cedb94720d52','2026-11-02',7,115,'L3',91,NULL,NULL,-8000000,8000000,0,'blank','maker',153,NULL,NULL,'solder',0,NULL,'face','part',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,688483,688847,697613,720623,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(238,'8283eea6-456b-5726-99bd-763635fded13','2026-11-02',7,113,'L4',92,NULL,NULL,-8000000,8000000,0,'blank','applied',40,NULL,NULL,'solder',0,NULL,'face','whole',NULL,NULL,NULL,'analysed','undecided',NULL,32,NULL,697613,697977,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(239,'ccf53c22-6177-52f8-a4e4-2988217bf258','2026-11-02',7,115,'L5',95,NULL,NULL,-8000000,8000000,0,'blank','applied',40,NULL,NULL,'solder',1,NULL,'face','part',NULL,NULL,NULL,'inferred','may go',NULL,32,'Melts below the silver''s own solder: no flame near it.',720624,721719,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(240,'cb06bb22-d97f-5bf2-8842-c108b11f31ca','2026-11-02',7,116,'L6',94,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'lacquer','coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,'The card has "lacquer, the good one". Infrared in 1994: cellulose nitrate.',713684,714048,20000000,20000000,727960,727987,0,0,0);
INSERT INTO layer VALUES(241,'4e520854-afda-57c0-a125-aa4b6123a2a4','2026-11-02',7,117,'L7',94,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'lacquer','coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,NULL,713684,714048,20000000,20000000,727960,727987,0,0,0);
INSERT INTO layer VALUES(242,'5582aa50-d3ff-5cce-ac83-7881ee62b233','2026-11-02',7,116,'L8',NULL,'1955/1994','1955/1994',713684,728293,0,'edtf','arisen',115,NULL,NULL,'corrosion',1,NULL,NULL,'part',NULL,NULL,NULL,'inferred',NULL,NULL,32,'Through pinholes.',713684,727987,727960,727987,733316,733346,0,0,0);
INSERT INTO layer VALUES(243,'40e3601a-6aed-53c2-9027-138aa8302877','2026-11-02',7,116,'L9',97,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,32,NULL,727988,728018,20000000,20000000,733316,733346,0,0,0);
INSERT INTO layer VALUES(244,'0132e97a-6595-5ba0-8f40-e3370d3283a6','2026-11-02',7,117,'L10',97,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,32,NULL,727988,728018,20000000,20000000,733316,733346,0,0,0);
INSERT INTO layer VALUES(245,'b924c248-f7dd-5ee6-bca9-e6188e0bb138','2026-11-02',7,116,'L11',99,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'coating',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',14,36,NULL,733351,733351,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(246,'42285f82-df7f-575b-bdd6-e57f891345b6','2026-11-02',7,117,'L12',99,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'coating',3,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',14,36,NULL,733351,733351,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(247,'c98330ca-d0ae-59d8-98fe-80701821c5af','2026-11-02',8,118,'L1',101,NULL,NULL,-8000000,8000000,0,'blank','maker',45,NULL,NULL,'fill',0,NULL,'edge','part',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,675334,675698,711493,727197,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(248,'9daecf83-cf82-56e8-9cc2-6523bf9c9683','2026-11-02',8,119,'L2',101,NULL,NULL,-8000000,8000000,0,'blank','maker',45,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,675334,675698,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(249,'a26a58d2-3e4c-5bb6-893d-5c6690982468','2026-11-02',8,121,'L3',101,NULL,NULL,-8000000,8000000,0,'blank','maker',45,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'inferred',NULL,NULL,1,NULL,675334,675698,727564,727928,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(250,'abe8e3fa-4de2-53c0-b74e-6f905450f3aa','2026-11-02',8,122,'L4',101,NULL,NULL,-8000000,8000000,0,'blank','maker',40,NULL,NULL,'solder',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,675334,675698,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(251,'b1ed5523-d944-538a-8012-1f035f4ca096','2026-11-02',8,123,'L5',102,NULL,NULL,-8000000,8000000,0,'blank','maker',44,NULL,NULL,'paint',0,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','keep',16,41,'Black over red lead.',675334,675698,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(252,'68f16569-7edb-5cfc-a951-46230722f41b','2026-11-02',8,120,'L6',103,NULL,NULL,-8000000,8000000,0,'blank','applied',45,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,28,NULL,711493,711857,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(253,'0a8ac8a5-f88b-5954-9036-01e4507ef56f','2026-11-02',8,123,'L7',104,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,28,NULL,711493,711857,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(254,'7e05bbcd-0a89-552f-8e26-f4aa53921691','2026-11-02',8,118,'L8',105,NULL,NULL,-8000000,8000000,0,'blank','applied',81,NULL,NULL,'fill',1,NULL,'edge','whole',NULL,NULL,NULL,'inferred',NULL,NULL,41,'Smelt of vinegar.',726833,727197,20000000,20000000,737949,737949,2,0,0);
INSERT INTO layer VALUES(255,'27a2c26c-ef8d-5ee9-b5eb-372da64589ca','2026-11-02',8,119,'L9',105,NULL,NULL,-8000000,8000000,0,'blank','applied',81,NULL,NULL,'fill',1,NULL,'edge','whole',NULL,NULL,NULL,'inferred','may go',16,41,NULL,726833,727197,20000000,20000000,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(256,'d8d58e1f-074d-5445-9246-4487a3455f1d','2026-11-02',8,121,'L10',105,NULL,NULL,-8000000,8000000,0,'blank','applied',81,NULL,NULL,'fill',1,NULL,'edge','whole',NULL,NULL,NULL,'inferred',NULL,NULL,41,NULL,726833,727197,727564,727928,20000000,20000000,2,0,0);
INSERT INTO layer VALUES(257,'c5aa94af-0e20-53b4-9ef0-f1a1253a37af','2026-11-02',8,118,'L11',107,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',2,'B','edge','spots','40 % w/v','acetone',NULL,'documented by the maker','may go',16,41,'Four beads.',737951,737951,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(258,'f0b971d6-a743-54e4-99b0-1d0d91d165df','2026-11-02',8,123,'L12',108,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,41,NULL,737972,738002,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(259,'a8e3e0ce-6b1f-56c4-852f-17aa42ea6536','2026-11-02',8,124,'L13',NULL,'1850/1949','1850/1949',675334,711857,0,'edtf','arisen',121,NULL,NULL,'deposit',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later','keep',16,41,'Soot of use: part of the lantern.',675334,711857,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(260,'35462358-d159-5e4e-8716-261f0bd32804','2026-11-02',9,130,'L1',110,NULL,NULL,-8000000,8000000,0,'blank','maker',48,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'analysed','keep',17,40,NULL,679352,679716,721475,721505,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(261,'57381f9a-754d-50ba-8e29-5cb39f58f569','2026-11-02',9,125,'L2',111,NULL,NULL,-8000000,8000000,0,'blank','maker',36,NULL,NULL,'bedding',0,NULL,'face','part',NULL,NULL,NULL,'inferred',NULL,NULL,1,NULL,679352,679716,736603,736633,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(262,'14d8db7e-8206-5702-bfe6-9618fc8c356d','2026-11-02',9,126,'L3',112,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,23,NULL,693262,693289,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(263,'5a7072fb-d052-5d65-8019-2f99ecc8d3fd','2026-11-02',9,130,'L4',113,NULL,NULL,-8000000,8000000,0,'blank','applied',94,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,'gum arabic',NULL,'documented by the maker',NULL,NULL,23,'"Bronse powder in gum." The carrier is read, not tested.',693262,693289,721475,721505,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(264,'c31a78e5-b215-54e7-9f33-409323a15856','2026-11-02',9,127,'L5',114,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later','may go',11,30,'"Smells of pear drops when warmed."',707475,712953,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(265,'b03a1903-b548-5420-8ad3-edd9ba41ef4f','2026-11-02',9,130,'L6',116,NULL,NULL,-8000000,8000000,0,'blank','applied',71,NULL,NULL,'coating',2,NULL,NULL,'whole','5 %','water','unknown','documented by the maker','undecided',17,30,'With chalk.',721506,721535,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(266,'826b753d-1428-5408-ad1e-5c4f3ed49040','2026-11-02',9,132,'L7',118,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'consolidant',0,NULL,NULL,'part','8 % w/v','ethyl acetate',NULL,'documented by the maker','undecided',17,40,NULL,736754,736784,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(267,'85b18051-054b-5531-94fa-e4b71a743391','2026-11-02',9,129,'L8',118,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'consolidant',1,'A','face','part','8 % w/v','ethyl acetate',NULL,'documented by the maker','undecided',17,40,NULL,736754,736784,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(268,'85893dc6-a04b-5d45-9550-d192f2241ebe','2026-11-02',9,129,'L9',NULL,'before 2018','../2017',-9000000,736694,0,'words','arisen',111,NULL,NULL,'corrosion',0,'B','face','whole',NULL,NULL,NULL,'inferred','may go',NULL,40,NULL,679352,736694,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(269,'404d52bc-d769-55cd-9111-9df6d62398b1','2026-11-02',9,130,'L10',NULL,'[1976..2018]','[1976..2018]',721354,737059,0,'edtf','arisen',118,NULL,NULL,'salts',3,NULL,NULL,'spots',NULL,NULL,NULL,'inferred',NULL,NULL,40,'Needles at the jaw; from the case, perhaps.',721354,737059,736695,737059,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(270,'67da7a66-ad68-53f7-955f-47cf3a351b4e','2026-11-02',10,133,'L1',120,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,29,'"Came off like skin."',653420,714779,20000000,20000000,718798,718828,0,0,0);
INSERT INTO layer VALUES(271,'62c7fa0c-19a6-5216-bf8b-5a153ec93867','2026-11-02',10,134,'L2',120,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,29,NULL,653420,714779,20000000,20000000,718798,718828,0,0,0);
INSERT INTO layer VALUES(272,'6314ab43-401b-5b1d-8421-82e987ca8352','2026-11-02',10,135,'L3',120,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,29,NULL,653420,714779,718798,718828,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(273,'7634dba4-c452-5086-afc6-431d4eadb5c7','2026-11-02',10,137,'L4',120,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,NULL,'adhesive',0,NULL,'face','unknown',NULL,NULL,'unknown','unknown',NULL,NULL,28,'"Some paste."',653420,714779,719163,723910,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(274,'74847859-3079-59c1-b381-c370894292fc','2026-11-02',10,133,'L5',122,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,29,NULL,718798,718828,20000000,20000000,729429,729443,0,0,0);
INSERT INTO layer VALUES(275,'b030a57b-483d-5b3b-adba-6db55677b1a1','2026-11-02',10,134,'L6',122,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,29,NULL,718798,718828,20000000,20000000,729429,729443,0,0,0);
INSERT INTO layer VALUES(276,'e760f3c6-b317-5e28-bacf-eb9168553d4e','2026-11-02',10,135,'L7',122,NULL,NULL,-8000000,8000000,0,'blank','applied',75,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,29,'Yellow.',718798,718828,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(277,'4f001b45-1ff2-5642-8f7c-7635f933570c','2026-11-02',10,137,'L8',123,NULL,NULL,-8000000,8000000,0,'blank','applied',80,NULL,NULL,'adhesive',1,NULL,'face','part',NULL,NULL,NULL,'inferred','may go',13,34,NULL,723911,725736,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(278,'cd8fe7bc-68ff-5dac-876c-b33e1b4e59b8','2026-11-02',10,133,'L9',125,NULL,NULL,-8000000,8000000,0,'blank','applied',76,NULL,NULL,'adhesive',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,34,'No barrier: recorded as none, for the look of the join.',729452,729452,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(279,'57aeb90d-60cf-5379-bbb1-17e0f9c53bd8','2026-11-02',10,134,'L10',125,NULL,NULL,-8000000,8000000,0,'blank','applied',76,NULL,NULL,'adhesive',2,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,34,NULL,729452,729452,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(280,'6beb4884-34bb-5844-af9e-3d164d3c5f04','2026-11-02',10,136,'L11',126,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',0,NULL,'face','whole','30 % w/v','acetone',NULL,'documented by the maker','may go',13,34,NULL,729480,729509,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(281,'b7d3767b-8476-5b12-a5f2-30235d46cf05','2026-11-02',10,139,'L12',NULL,'1998/2026','1998/2026',729390,739981,0,'edtf','arisen',NULL,NULL,NULL,'deposit',0,NULL,NULL,'spots',NULL,NULL,NULL,'unknown',NULL,NULL,43,'Haze along the joins; wipes off dry, comes back.',729390,739764,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(282,'b1da6656-2bc1-5bdd-9bbd-9c5e399bcbd0','2026-11-02',11,140,'L1',128,NULL,NULL,-8000000,8000000,0,'blank','maker',155,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,685926,686290,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(283,'a8db4cec-55bc-58ee-898b-331700788424','2026-11-02',11,141,'L2',128,NULL,NULL,-8000000,8000000,0,'blank','maker',155,NULL,NULL,'fill',0,NULL,'edge','part',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,685926,686290,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(284,'7bde2764-ef1b-527e-b599-9d231c1be039','2026-11-02',11,145,'L3',128,NULL,NULL,-8000000,8000000,0,'blank','maker',155,NULL,NULL,'fill',0,NULL,'edge','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,685926,686290,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(285,'8bb728a2-408d-5425-ae5b-b247990cdc6e','2026-11-02',11,142,'L4',130,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'cement','fill',0,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,'"Cement" here is the glazier''s word for putty, probably.',691313,691343,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(286,'66769918-bece-54b8-a926-e85221a489df','2026-11-02',11,144,'L5',130,NULL,NULL,-8000000,8000000,0,'blank','applied',40,NULL,NULL,'solder',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,NULL,691313,691343,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(287,'235c7788-9ebb-5e32-ad0e-c16c41a1d591','2026-11-02',11,143,'L6',131,NULL,NULL,-8000000,8000000,0,'blank','applied',40,NULL,NULL,'solder',0,NULL,'edge','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,23,'The lead strap, soldered at both ends.',691313,691343,20000000,20000000,725889,725918,0,0,0);
INSERT INTO layer VALUES(288,'f9005ca8-f33e-5820-96a0-5115ba810100','2026-11-02',11,143,'L7',133,NULL,NULL,-8000000,8000000,0,'blank','applied',81,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',12,31,NULL,725889,725918,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(289,'7024b5eb-be81-5690-ae82-11145810a1bf','2026-11-02',11,146,'L8',129,NULL,NULL,-8000000,8000000,0,'blank','maker',154,NULL,NULL,'paint',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,685926,686290,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(290,'86db96a3-f18f-5061-89b0-172a5da4fa89','2026-11-02',11,146,'L9',134,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'consolidant',1,NULL,NULL,'part','5 % w/v','toluene',NULL,'documented by the maker','undecided',12,31,NULL,725919,725949,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(291,'4daa19c3-25bb-5374-a527-d28536fd5bf4','2026-11-02',11,147,'L10',NULL,'1879/1988','1879/1988',685926,726102,0,'edtf','arisen',119,NULL,NULL,'biofilm',0,NULL,NULL,'spots',NULL,NULL,NULL,'documented later','may go',NULL,31,NULL,685926,725949,725919,725949,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(292,'98716755-8974-598a-b1bd-482b57e95bfa','2026-11-02',12,151,'L1',137,NULL,NULL,-8000000,8000000,0,'blank','maker',32,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,657802,658166,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(293,'70f64471-389e-53af-8cb2-10950a1df199','2026-11-02',12,153,'L2',137,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','unknown',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,657802,658166,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(294,'bfb0ab2f-83c4-5983-a9a9-f397b471ece5','2026-11-02',12,154,'L3',137,NULL,NULL,-8000000,8000000,0,'blank','maker',39,NULL,NULL,'lead run',0,NULL,'face','unknown',NULL,NULL,NULL,'inferred','keep',NULL,1,NULL,657802,658166,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(295,'2a5af5f3-9dec-5acc-9c07-1699229ae8a5','2026-11-02',12,148,'L4',136,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'stone cement','adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,23,'A dealer''s word: shellac, sulphur or casein would all answer to it.',657802,695421,720502,720531,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(296,'769ea424-bc73-5174-8368-e6e69e8aa9e2','2026-11-02',12,149,'L5',136,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'stone cement','adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented later','undecided',NULL,23,NULL,657802,695421,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(297,'5e5a1011-5630-502b-abf1-63dc011956fc','2026-11-02',12,150,'L6',138,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'bedding',0,NULL,'face','part',NULL,NULL,NULL,'documented by the maker','undecided',NULL,23,NULL,695846,695876,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(298,'ec11a5fd-3534-5066-9d3e-f7b7ecb2a42a','2026-11-02',12,150,'L7',138,NULL,NULL,-8000000,8000000,0,'blank','applied',46,NULL,NULL,'adhesive',1,NULL,'face','part',NULL,NULL,NULL,'documented by the maker','may go',NULL,23,'"Pitch at the corners."',695846,695876,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(299,'27c1d6b9-70f5-5830-bea5-6d4b4ef71edb','2026-11-02',12,148,'L8',140,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',12,29,'Barrier: not recorded.',720502,720531,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(300,'33c03f34-b8c4-5923-8a3f-40f6d70c52af','2026-11-02',12,155,'L9',140,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,29,NULL,720502,720531,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(301,'092d771e-1284-57f4-95b9-211e59d6d520','2026-11-02',12,156,'L10',140,NULL,NULL,-8000000,8000000,0,'blank','applied',78,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',NULL,29,NULL,720502,720531,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(302,'1c0319a2-d0e3-5e7a-a0c6-cf90fcc94e88','2026-11-02',12,157,'L11',NULL,'1802','1802',657802,658166,0,'edtf','maker',44,NULL,NULL,'paint',0,NULL,NULL,'part',NULL,NULL,NULL,'inferred','keep',12,31,'Lamp black in the letters.',657802,658166,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(303,'5545dc3f-8a31-513e-8b9a-5dee719b6828','2026-11-02',12,157,'L12',NULL,'1906/1973','1906/1973',695787,720623,0,'edtf','applied',44,NULL,NULL,'paint',1,NULL,NULL,'part',NULL,NULL,NULL,'documented later',NULL,NULL,31,'Letters lined again, by whom nobody knows.',695787,720623,724762,724792,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(304,'2d86c113-a20d-5e2d-996c-4950239acbca','2026-11-02',12,157,'L13',143,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',NULL,31,NULL,724793,724822,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(305,'55702f2e-718f-5155-8042-72e3cc8fdad6','2026-11-02',12,158,'L14',NULL,'before 1985','../1984',-9000000,724641,0,'words','arisen',111,NULL,NULL,'corrosion',0,NULL,NULL,'part',NULL,NULL,NULL,'inferred','may go',NULL,31,'Brown halo of the hidden dowel.',657802,724641,724732,724792,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(306,'c02b9260-93ff-5b15-8c06-c4e14f616526','2026-11-02',13,159,'L1',145,NULL,NULL,-8000000,8000000,0,'blank','applied',27,NULL,NULL,'bedding',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','keep',NULL,26,'Washer, now hard as horn.',707565,707594,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(307,'faf4da27-99e4-586c-b2ec-bf5155b20bf3','2026-11-02',13,160,'L2',146,NULL,NULL,-8000000,8000000,0,'blank','applied',40,NULL,NULL,'solder',0,NULL,'face','part',NULL,NULL,NULL,'documented by the maker','undecided',16,26,'Dulls the note.',707565,707594,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(308,'513b2d4f-a8ce-51de-ba12-c23f9b27aa75','2026-11-02',13,163,'L3',NULL,'1838/1938','1838/1938',670951,707839,0,'edtf','arisen',112,NULL,NULL,'corrosion',0,NULL,'face','part',NULL,NULL,NULL,'inferred',NULL,NULL,41,NULL,670951,707594,707565,707594,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(309,'79e4f04c-a832-5317-9f51-bccd8c3d7d91','2026-11-02',13,166,'L4',NULL,'1838/1961','1838/1961',670951,716240,0,'edtf','arisen',123,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'documented later',NULL,NULL,28,NULL,670951,716240,20000000,20000000,715876,716240,0,0,0);
INSERT INTO layer VALUES(310,'3e0988e5-643a-5e4e-bc36-78b300b07435','2026-11-02',13,166,'L5',148,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'lacquer','coating',1,NULL,NULL,'whole',NULL,NULL,'unknown','documented by the maker',NULL,NULL,28,'Infrared in 2021: cellulose nitrate with a little alkyd.',715876,716240,20000000,20000000,737881,737910,0,0,0);
INSERT INTO layer VALUES(311,'b034fca6-60a2-59a4-862c-cd04a9d3153b','2026-11-02',13,167,'L6',NULL,'1838/2021','1838/2021',670951,738155,0,'edtf','arisen',123,NULL,NULL,'patina',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','keep',16,41,'Never polished inside.',670951,738155,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(312,'137577c6-7673-575b-855c-26a7aeebf7fb','2026-11-02',13,167,'L7',NULL,'1990/2021','1990/2021',726468,738155,0,'edtf','arisen',113,NULL,NULL,'corrosion',1,NULL,NULL,'spots',NULL,NULL,NULL,'analysed','may go',16,41,NULL,726468,737880,737850,737880,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(313,'da02ab5f-3d0e-5e65-b1be-f133c6544f33','2026-11-02',13,166,'L8',152,NULL,NULL,-8000000,8000000,0,'blank','applied',85,NULL,NULL,'wax',2,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker','may go',16,41,NULL,738034,738063,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(314,'0bc2c6eb-cfa8-5ebe-af9b-d4602441b8b2','2026-11-02',13,168,'L9',149,NULL,NULL,-8000000,8000000,0,'blank','applied',43,NULL,NULL,'coating',0,NULL,NULL,'whole',NULL,NULL,NULL,'inferred','may go',NULL,41,NULL,722815,738124,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(315,'9702fe8c-583b-5965-926e-041ef2743122','2026-11-02',13,166,'L10',NULL,'1838','1838',670951,671315,0,'edtf','maker',103,NULL,NULL,'gilding',0,NULL,NULL,'part',NULL,NULL,NULL,'documented later',NULL,NULL,41,'In the letters of the name; none was left by 2021.',670951,671315,20000000,20000000,670951,737790,0,0,0);
INSERT INTO layer VALUES(316,'25e028aa-6040-56fa-ac42-76939354f8f5','2026-11-02',2,169,'L01a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,'Still holds.',689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(317,'c007fea7-93b9-5f3e-91d5-b7965a5085e1','2026-11-02',2,170,'L02a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(318,'70ebce68-c0be-58d5-b1ff-7343b7820d76','2026-11-02',2,171,'L03a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,'Darkest of all: overheated.',689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(319,'4773ab7a-5e87-5191-b9ee-860bd588ffd7','2026-11-02',2,172,'L04a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(320,'cca37d8c-59dc-5066-bd1d-301ebc03c0e2','2026-11-02',2,173,'L05a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(321,'65853541-2870-54ce-b4e1-c07c068a4b6f','2026-11-02',2,174,'L06a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(322,'dbb2b27b-9d66-5fc6-bd41-cf40a3f7bdc1','2026-11-02',2,175,'L07a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(323,'71ac4e79-2cd0-5998-84d7-0cbcbf2bc96b','2026-11-02',2,176,'L08a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(324,'0a84097a-bee3-52a4-b966-f807d88331ec','2026-11-02',2,177,'L09a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,712832,728883,0,0,0);
INSERT INTO layer VALUES(325,'b36dbd8b-b466-50fc-9000-01321ca64fe1','2026-11-02',2,178,'L10a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(326,'c5952071-4e40-50a4-b6f6-8c49b6720f13','2026-11-02',2,179,'L11a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(327,'ae7c0973-262d-50df-8090-16c0316cd78a','2026-11-02',2,180,'L12a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,712832,712861,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(328,'35ad9488-3939-552d-8773-3ed91e057c90','2026-11-02',2,181,'L13a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,722116,722143,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(329,'9e245fce-9539-500a-98d0-46d25e6cfb3c','2026-11-02',2,182,'L14a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,722116,722143,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(330,'db14a37e-711c-51c5-8b4a-2356c84f04e5','2026-11-02',2,183,'L15a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,722116,722143,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(331,'f3eee601-3cee-5d61-85be-75cc0ff79128','2026-11-02',2,184,'L16a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,722116,722143,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(332,'e3aaca70-e045-5270-85aa-5af905203fe3','2026-11-02',2,185,'L17a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,722116,722143,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(333,'0b590973-1de0-50bb-a014-e0147df59da9','2026-11-02',2,187,'L19a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',48,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','undecided',13,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(334,'33741d5e-a47e-5050-bae3-06f83c3f0531','2026-11-02',2,175,'L07b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,NULL,712862,712922,20000000,20000000,728884,728891,0,0,0);
INSERT INTO layer VALUES(335,'590380f2-0ff9-50ea-8519-e8c59b52b04c','2026-11-02',2,176,'L08b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,NULL,712862,712922,20000000,20000000,728884,728891,0,0,0);
INSERT INTO layer VALUES(336,'bcd63fb8-5007-5f46-93b3-efd81eba3826','2026-11-02',2,177,'L09b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,NULL,712862,712922,20000000,20000000,728884,728891,0,0,0);
INSERT INTO layer VALUES(337,'b67a64ba-2c9e-53b9-89cb-4e2998752a1e','2026-11-02',2,178,'L10b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,28,NULL,712862,712922,20000000,20000000,728884,728891,0,0,0);
INSERT INTO layer VALUES(338,'9b6ee84a-8e9c-51dd-a0b2-f2014a0a44f4','2026-11-02',2,179,'L11b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',13,28,NULL,712862,712922,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(339,'a770aff6-ab6a-500a-83a1-3bb1bb926e3f','2026-11-02',2,180,'L12b',160,NULL,NULL,-8000000,8000000,0,'blank','applied',61,NULL,NULL,'adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',13,28,NULL,712862,712922,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(340,'48551c20-1372-5747-bedf-bd45cf950aaa','2026-11-02',2,181,'L13b',162,NULL,NULL,-8000000,8000000,0,'blank','applied',68,NULL,NULL,'adhesive',1,NULL,'face','whole','about 30 %','acetone',NULL,'documented by the maker','may go',13,30,NULL,722144,722174,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(341,'13d85bc7-f9e1-5591-8603-156a02c4916f','2026-11-02',2,182,'L14b',162,NULL,NULL,-8000000,8000000,0,'blank','applied',68,NULL,NULL,'adhesive',1,NULL,'face','whole','about 30 %','acetone',NULL,'documented by the maker','may go',13,30,'Creeps: the shoulder sinks on warm days.',722144,722174,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(342,'7862419c-6909-5d4b-b84a-8b2a32be3551','2026-11-02',2,183,'L15b',162,NULL,NULL,-8000000,8000000,0,'blank','applied',68,NULL,NULL,'adhesive',1,NULL,'face','whole','about 30 %','acetone',NULL,'documented by the maker','may go',13,30,NULL,722144,722174,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(343,'0fdc75d9-14e8-5dfa-a39f-c9b06bda5822','2026-11-02',2,184,'L16b',163,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'PVA','adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,30,'Acetate, most likely; solution or white glue not known.',722175,722204,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(344,'6bd481e7-8895-51fb-8f19-34ada73e3098','2026-11-02',2,185,'L17b',163,NULL,NULL,-8000000,8000000,0,'blank','applied',NULL,NULL,'PVA','adhesive',1,NULL,'face','whole',NULL,NULL,NULL,'documented later',NULL,NULL,30,NULL,722175,722204,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(345,'3894548f-af76-584f-a54b-d953ae06d6c1','2026-11-02',2,175,'L07c',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',2,NULL,'face','whole','5 % w/v','acetone','yes','documented by the maker','keep',13,33,'Both edges primed.',728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(346,'2215ab98-6044-5252-a1a4-6bf013c687dc','2026-11-02',2,175,'L07d',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',3,NULL,'face','whole','50 % w/v','acetone',NULL,'documented by the maker','may go',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(347,'7254cc3c-f60e-5ab8-8a9a-f6f914270c85','2026-11-02',2,176,'L08c',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',2,NULL,'face','whole','5 % w/v','acetone','yes','documented by the maker','keep',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(348,'6874fc3b-8def-510d-89d6-ab4c710bc3b0','2026-11-02',2,176,'L08d',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',3,NULL,'face','whole','50 % w/v','acetone',NULL,'documented by the maker','may go',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(349,'f26f993d-6dc4-5666-a9ce-28fc9be935eb','2026-11-02',2,177,'L09c',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',2,NULL,'face','whole','5 % w/v','acetone','yes','documented by the maker','keep',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(350,'45de4635-9205-5c71-af00-46b5c80ba952','2026-11-02',2,177,'L09d',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',3,NULL,'face','whole','50 % w/v','acetone',NULL,'documented by the maker','may go',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(351,'2d76cb6b-b9bc-5c33-9d76-8de6076ea9be','2026-11-02',2,178,'L10c',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'barrier',2,NULL,'face','whole','5 % w/v','acetone','yes','documented by the maker','keep',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(352,'26e5df74-f3ce-574a-81cc-bebb27f2711f','2026-11-02',2,178,'L10d',168,NULL,NULL,-8000000,8000000,0,'blank','applied',63,NULL,NULL,'adhesive',3,NULL,'face','whole','50 % w/v','acetone',NULL,'documented by the maker','may go',13,33,NULL,728904,728908,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(353,'38a2294c-f003-5d5b-9a17-84c4e190b9f8','2026-11-02',2,178,'L10e',169,NULL,NULL,-8000000,8000000,0,'blank','applied',90,NULL,NULL,'fill',4,NULL,'edge','part',NULL,NULL,NULL,'documented by the maker','may go',13,33,NULL,728964,728993,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(354,'7c1047d0-03ac-5024-98f7-558797abedc7','2026-11-02',2,186,'L18a',155,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,24,NULL,689944,690587,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(355,'d3cb87b2-b0d1-5137-a1e6-02e7d110a8e6','2026-11-02',2,188,'L20a',157,NULL,NULL,-8000000,8000000,0,'blank','applied',53,NULL,NULL,'adhesive',0,NULL,'face','whole',NULL,NULL,NULL,'documented by the maker','may go',13,26,NULL,706744,707109,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(356,'125f4514-68dd-5b8c-937b-67e19493f6be','2026-11-02',2,189,'L21a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'fill',0,NULL,'face','whole',NULL,NULL,NULL,'inferred',NULL,NULL,24,NULL,689944,690587,20000000,20000000,712832,712861,0,0,0);
INSERT INTO layer VALUES(357,'674e6273-f48e-5033-9c83-ca10ffc02d56','2026-11-02',2,190,'L22a',154,NULL,NULL,-8000000,8000000,0,'blank','applied',36,NULL,NULL,'fill',0,NULL,'face','whole',NULL,NULL,NULL,'inferred',NULL,NULL,24,NULL,689944,690587,20000000,20000000,712832,712861,0,0,0);
INSERT INTO layer VALUES(358,'90cca233-0b9d-5dd8-bb26-36917205040b','2026-11-02',2,191,'LS1a',156,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',0,NULL,NULL,'part',NULL,NULL,NULL,'inferred',NULL,NULL,33,NULL,700900,704552,20000000,20000000,728780,728871,0,0,0);
INSERT INTO layer VALUES(359,'0a407d91-4133-5bdf-a5c0-a27b5a2da939','2026-11-02',2,191,'LS1b',158,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'part',NULL,NULL,NULL,'documented by the maker',NULL,NULL,26,NULL,706744,707109,728780,728871,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(360,'4fe11e21-d652-5748-a3c1-bd8c20af8eed','2026-11-02',2,192,'LS2a',158,NULL,NULL,-8000000,8000000,0,'blank','applied',44,NULL,NULL,'paint',1,NULL,NULL,'whole',NULL,NULL,NULL,'documented by the maker',NULL,NULL,26,NULL,706744,707109,728780,728871,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(361,'597da445-551d-5263-8f48-d9b3df8453da','2026-11-02',2,191,'LS1c',169,NULL,NULL,-8000000,8000000,0,'blank','applied',91,NULL,NULL,'inpainting',2,NULL,NULL,'spots',NULL,'water',NULL,'documented by the maker','may go',13,33,NULL,728964,728993,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(362,'523ad7dc-5853-516f-a7b7-570ca1202db6','2026-11-02',2,193,'LM1a',164,NULL,NULL,-8000000,8000000,0,'blank','applied',72,NULL,NULL,'consolidant',0,NULL,NULL,'part','3 %','ethanol',NULL,'documented by the maker','undecided',13,30,'Will not come out again.',722144,722174,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer VALUES(363,'ae0244c4-052f-55a8-884d-ae03d9051112','2026-11-02',2,NULL,'LS3a',NULL,'between 1891 and 1996','1891/1996',690309,729024,0,'words','applied',NULL,NULL,NULL,'varnish',1,NULL,NULL,'unknown',NULL,NULL,NULL,'unknown',NULL,NULL,33,'Fluoresces greenish under the overpaint, on the rim or the wall: the report names no place.',690309,728840,20000000,20000000,20000000,20000000,0,0,0);
CREATE TABLE warning (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	component_id INTEGER, 
	place_id INTEGER, 
	kind TEXT, 
	text TEXT, 
	since_words TEXT, 
	since_edtf TEXT, 
	since_earliest INTEGER NOT NULL, 
	since_latest INTEGER NOT NULL, 
	since_flags INTEGER NOT NULL, 
	since_derived TEXT NOT NULL, 
	until_words TEXT, 
	until_edtf TEXT, 
	until_earliest INTEGER NOT NULL, 
	until_latest INTEGER NOT NULL, 
	until_flags INTEGER NOT NULL, 
	until_derived TEXT NOT NULL, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_warning_since_in_order CHECK (since_earliest <= since_latest), 
	CONSTRAINT ck_warning_until_in_order CHECK (until_earliest <= until_latest), 
	CONSTRAINT fk_warning_object_id_component_id FOREIGN KEY(object_id, component_id) REFERENCES component (object_id, id), 
	CONSTRAINT fk_warning_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id), 
	CONSTRAINT fk_warning_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_warning_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_warning_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_warning_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO warning VALUES(1,'12e837f2-bfa4-5c4e-822f-6a0be9771ef5','2026-11-02',1,'N1w',NULL,35,'lead','Lead in all cramp and armature sockets, and in the mastic. Wash hands; no dry scraping.','1741','1741',635523,635887,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',2,NULL);
INSERT INTO warning VALUES(2,'49ba74c8-d65f-546e-8479-8d4a8b1cd66a','2026-11-02',1,'N2w',12,14,'live joint','The right dolphin moves on its seat. 0.3 mm on the gauge.','2019-06-12','2019-06-12',737222,737222,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',20,NULL);
INSERT INTO warning VALUES(3,'b60a7d77-4e3b-59a0-a9cc-39d3b5f0f41c','2026-11-02',1,'N3w',12,14,'do not lift by','Never lift B07 by the dolphin, nor B12 alone: a hidden cramp and two pins hold it in ways not known.','2011-10-04','2011-10-04',734414,734414,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',17,NULL);
INSERT INTO warning VALUES(4,'52bbe631-458b-52be-808f-19ed9d87424a','2026-11-02',1,'N4w',5,58,'do not wet','Each wetting brings the salts back.','1976-10','1976-10',721628,721658,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',13,NULL);
INSERT INTO warning VALUES(5,'ac7fb992-36fa-5abf-9167-11b7e3e1c8c3','2026-11-02',1,'N5w',13,15,'nitrate','Cellulose nitrate on the break: no metal lid, no heat, check yearly.','2012-01-18','2012-01-18',734520,734520,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO warning VALUES(6,'70da7db6-99bf-503a-ad81-e7244a185128','2026-11-02',1,'N6w',15,18,'live joint','Hairline at the right front corner; sister joint of the one that pulled stone.','2026-09-16','2026-09-16',739875,739875,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',22,NULL);
INSERT INTO warning VALUES(7,'68fa7219-1ed5-5514-9b37-6830bdb4ea04','2026-11-02',1,'N7w',15,61,'do not wet','Faced with tissue over cyclododecane: no water, no warm lamp.','2026-10-19','2026-10-19',739908,739908,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL);
INSERT INTO warning VALUES(8,'d26b1f56-5610-5787-a667-0eee7e42a1fb','2026-11-02',1,'N8w',19,62,'do not heat','Waxed.','2012-07','2012-07',734685,734715,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',18,NULL);
INSERT INTO warning VALUES(9,'33f1f6d6-9d8c-5669-b211-7911b25acbd4','2026-11-02',1,'N9w',9,NULL,'do not lift by','Do not sling over the scaled corner at D1.','1989-05','1989-05',726223,726253,0,'edtf','2012-05','2012-05',734624,734654,0,'edtf',15,'Corner supported since by the frame.');
INSERT INTO warning VALUES(10,'bebcfdcb-ec8e-5870-b87b-42eac9e002e4','2026-11-02',4,'N1',45,84,'do not lift by','Never by the head: dowel not known, join crooked.','1972-11','1972-11',720198,720227,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',29,NULL);
INSERT INTO warning VALUES(11,'2628c7a5-d471-5907-bb8f-c5124e2b6ea5','2026-11-02',5,'N1',NULL,97,'pesticide','Mercury on the front. Gloves, no sanding, no brush without extraction.','2015-02-26','2015-02-26',735655,735655,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',39,NULL);
INSERT INTO warning VALUES(12,'44eb2dcc-c2ea-5239-96c6-559c55b2a83b','2026-11-02',5,'N2',52,97,'nitrate','Nitrate filler in the worm holes.','by 1957','../1957',-9000000,714779,0,'words',NULL,NULL,-8000000,8000000,0,'blank',28,NULL);
INSERT INTO warning VALUES(13,'e3df3126-e54c-5424-afad-f5017764397a','2026-11-02',6,'N1',NULL,NULL,'lead','Lead in the paint of 1838 and 1880 and under the gloss.','2014-03','2014-03',735293,735323,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',38,NULL);
INSERT INTO warning VALUES(14,'43846661-ddea-564c-878e-9dc537f07892','2026-11-02',6,'N2',63,101,'do not lift by','The right arm is loose in its mortise.','2014-03','2014-03',735293,735323,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',38,NULL);
INSERT INTO warning VALUES(15,'6d7eb8b3-1ad7-59bc-980e-fd366f70263c','2026-11-02',7,'N1',NULL,115,'do not heat','Soft solder at the finial.','1994-03','1994-03',727988,728018,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',32,NULL);
INSERT INTO warning VALUES(16,'396c5697-dd90-5922-bb2a-812dabbf44c6','2026-11-02',7,'N2',NULL,116,'nitrate','Nitrate lacquer.','2008-11-05','2008-11-05',733351,733351,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',36,NULL);
INSERT INTO warning VALUES(17,'33ef3ad7-1b04-571d-8b02-489548f731c0','2026-11-02',8,'N1',NULL,123,'lead','Red lead under the black.','2021-07','2021-07',737972,738002,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',41,NULL);
INSERT INTO warning VALUES(18,'01dec043-d025-596b-b7f4-5ff58d9f5172','2026-11-02',8,'N2',83,NULL,'do not heat','Lamp oil in the burner.','2021-05-20','2021-05-20',737930,737930,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',41,NULL);
INSERT INTO warning VALUES(19,'21fcc96b-cf86-5e43-bec7-192da44ea5d9','2026-11-02',9,'N1',84,130,'do not wet','Plaster; the sealing is gone in places.','1976-05','1976-05',721475,721505,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',30,NULL);
INSERT INTO warning VALUES(20,'72c1fb03-8bb8-531a-9f57-672f8b638d32','2026-11-02',9,'N2',86,127,'nitrate','Ear stuck with cellulose nitrate.','2018-03','2018-03',736754,736784,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',40,NULL);
INSERT INTO warning VALUES(21,'9dda9f28-574d-58e9-b7c7-70c56dc0371b','2026-11-02',9,'N3',84,129,'live joint','Split over a rusting armature.','2018-01-16','2018-01-16',736710,736710,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',40,NULL);
INSERT INTO warning VALUES(22,'d72ae943-549a-50c8-8549-1e63db63aafe','2026-11-02',10,'N1',94,137,'live joint','Clicks at the stem. Two hands, never by the stem alone.','2026-05-28','2026-05-28',739764,739764,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',43,NULL);
INSERT INTO warning VALUES(23,'95a03b06-3526-5cc3-8d29-bd92aedebccc','2026-11-02',11,'N1',102,NULL,'lead','Lead cames.',NULL,NULL,-8000000,8000000,0,'blank',NULL,NULL,-8000000,8000000,0,'blank',1,NULL);
INSERT INTO warning VALUES(24,'d4a01917-4647-5b18-87f8-82753802651e','2026-11-02',12,'N1',104,150,'live joint','Hollow at the top; do not hang.','1985-04','1985-04',724732,724761,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',31,NULL);
INSERT INTO warning VALUES(25,'1cb7bb44-8eeb-53ef-a107-f27bb3910281','2026-11-02',12,'N2',107,151,'do not lift by','The urn sits on a hidden dowel.','1985-04','1985-04',724732,724761,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',31,NULL);
INSERT INTO warning VALUES(26,'d5f10a69-acb2-5f2b-ba2b-914c28f432df','2026-11-02',13,'N1',112,160,'live joint','Crack past its solder: do not ring.','2026-06-09','2026-06-09',739776,739776,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',43,NULL);
INSERT INTO warning VALUES(27,'d76ec43d-33b5-5208-a58f-4dd33ea905ea','2026-11-02',2,'N1',131,182,'live joint','The shoulder sinks in warmth. Not above 22 degrees, not by the rim.','2025-04-08','2025-04-08',739349,739349,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',42,NULL);
INSERT INTO warning VALUES(28,'d5af8ab1-37c3-5163-b9ed-b0ba9364f3b0','2026-11-02',2,'N2',NULL,179,'nitrate','Joins 11 and 12 are cellulose nitrate.','2013-05-17','2013-05-17',735005,735005,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',37,NULL);
INSERT INTO warning VALUES(29,'c9a02988-1c63-5b96-80d6-011436f9c0cb','2026-11-02',2,'N3',140,188,'do not lift by','The right handle is plaster on old glue.','1996-12','1996-12',728994,729024,0,'edtf',NULL,NULL,-8000000,8000000,0,'blank',33,NULL);
CREATE TABLE layer_candidate (
	object_id INTEGER NOT NULL, 
	layer_id INTEGER NOT NULL, 
	place_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	CONSTRAINT pk_layer_candidate PRIMARY KEY (layer_id, place_id), 
	CONSTRAINT fk_layer_candidate_object_id_layer_id FOREIGN KEY(object_id, layer_id) REFERENCES layer (object_id, id), 
	CONSTRAINT fk_layer_candidate_object_id_place_id FOREIGN KEY(object_id, place_id) REFERENCES place (object_id, id)
)
 STRICT

;
INSERT INTO layer_candidate VALUES(1,138,55,0);
INSERT INTO layer_candidate VALUES(1,138,57,1);
INSERT INTO layer_candidate VALUES(1,138,4,2);
INSERT INTO layer_candidate VALUES(1,144,56,0);
INSERT INTO layer_candidate VALUES(1,144,69,1);
INSERT INTO layer_candidate VALUES(1,144,14,2);
INSERT INTO layer_candidate VALUES(3,193,81,0);
INSERT INTO layer_candidate VALUES(3,193,82,1);
INSERT INTO layer_candidate VALUES(5,215,97,0);
INSERT INTO layer_candidate VALUES(5,215,98,1);
INSERT INTO layer_candidate VALUES(5,215,99,2);
INSERT INTO layer_candidate VALUES(2,363,192,0);
INSERT INTO layer_candidate VALUES(2,363,191,1);
CREATE TABLE layer_side (
	layer_id INTEGER NOT NULL, 
	side TEXT NOT NULL, 
	came_from INTEGER NOT NULL, 
	came_to INTEGER NOT NULL, 
	reduced_from INTEGER NOT NULL, 
	reduced_to INTEGER NOT NULL, 
	gone_from INTEGER NOT NULL, 
	gone_to INTEGER NOT NULL, 
	came_flags INTEGER NOT NULL, 
	reduced_flags INTEGER NOT NULL, 
	gone_flags INTEGER NOT NULL, 
	CONSTRAINT pk_layer_side PRIMARY KEY (layer_id, side), 
	CONSTRAINT ck_layer_side_side_known CHECK (side IN ('A', 'B')), 
	CONSTRAINT ck_layer_side_bounds_in_order CHECK (came_from <= came_to AND reduced_from <= reduced_to AND gone_from <= gone_to), 
	CONSTRAINT ck_layer_side_came_before_it_went CHECK (came_to <= gone_to AND came_from <= gone_from AND came_to <= reduced_to AND came_from <= reduced_from), 
	CONSTRAINT fk_layer_side_layer_id FOREIGN KEY(layer_id) REFERENCES layer (id)
)
 STRICT

;
INSERT INTO layer_side VALUES(52,'A',706178,706178,734624,734654,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(52,'B',706178,706178,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(72,'A',726238,726238,734555,734571,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(72,'B',726238,726238,20000000,20000000,734555,734571,0,0,0);
INSERT INTO layer_side VALUES(86,'A',635523,635887,682060,682151,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(86,'B',635523,635887,682060,682151,708571,710031,0,0,0);
INSERT INTO layer_side VALUES(87,'A',682152,682214,709666,715144,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(87,'B',682152,682214,20000000,20000000,708571,710031,0,0,0);
INSERT INTO layer_side VALUES(103,'A',635523,635887,20000000,20000000,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(103,'B',635523,635887,734673,734673,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(189,'A',691739,691828,692135,696516,20000000,20000000,0,0,0);
INSERT INTO layer_side VALUES(189,'B',691739,691828,692135,696516,692135,698708,0,0,0);
INSERT INTO layer_side VALUES(190,'A',696517,697977,20000000,20000000,696517,727245,0,0,0);
INSERT INTO layer_side VALUES(190,'B',696517,697977,20000000,20000000,696517,698708,0,0,0);
INSERT INTO layer_side VALUES(249,'A',675334,675698,727564,727928,20000000,20000000,2,0,0);
INSERT INTO layer_side VALUES(249,'B',675334,675698,727564,727928,727564,727928,2,0,0);
INSERT INTO layer_side VALUES(256,'A',726833,727197,727564,727928,20000000,20000000,2,0,0);
INSERT INTO layer_side VALUES(256,'B',726833,727197,727564,727928,727564,727928,2,0,0);
CREATE TABLE removal (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	layer_id INTEGER NOT NULL, 
	intervention_id INTEGER, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	cause TEXT, 
	extent TEXT, 
	side TEXT, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_removal_extent_known CHECK (extent IN ('all', 'part', 'attempted')), 
	CONSTRAINT ck_removal_side_known CHECK (side IN ('A', 'B')), 
	CONSTRAINT ck_removal_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT fk_removal_object_id_intervention_id FOREIGN KEY(object_id, intervention_id) REFERENCES intervention (object_id, id), 
	CONSTRAINT fk_removal_object_id_layer_id FOREIGN KEY(object_id, layer_id) REFERENCES layer (object_id, id), 
	CONSTRAINT fk_removal_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_removal_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_removal_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_removal_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO removal VALUES(1,'37f4d55b-d653-5e99-b0d6-83eeb3f8867a','2026-11-02',1,'X01a',1,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,'"Old beds cleaned off", as far as the chisel went.');
INSERT INTO removal VALUES(2,'3c402176-7f17-5d97-b510-aaebbb513c64','2026-11-02',1,'X01b',2,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(3,'33f50756-84c4-5c8e-8154-da2a4b4bb904','2026-11-02',1,'X02a',4,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(4,'018b07c3-5b77-5d67-9444-21581a27ce6e','2026-11-02',1,'X02b',5,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(5,'0321c0c9-8f27-5fa1-ba6b-a33ce1764a94','2026-11-02',1,'X03a',7,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(6,'2d41cc22-af44-5ac0-927c-3f0a50cf78b3','2026-11-02',1,'X04a',10,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(7,'a1a436b6-c54f-5d18-9bdc-9df71593818a','2026-11-02',1,'X04c',12,NULL,'between 1935 and 1957','1935/1957',706379,714779,0,'words','fell out','part',NULL,10,NULL);
INSERT INTO removal VALUES(8,'67364193-38ec-5b76-83d4-0566c9edfd39','2026-11-02',1,'X04d',138,27,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,13,'Turpentine on a rag, left half, given up.');
INSERT INTO removal VALUES(9,'125ecdbc-a7f4-5b0b-93fa-b6beadc53135','2026-11-02',1,'X06a',17,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,12,NULL);
INSERT INTO removal VALUES(10,'ea30e57c-489f-5363-9a67-6771b20d90c9','2026-11-02',1,'X06b',18,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,12,NULL);
INSERT INTO removal VALUES(11,'8d289460-a96b-57db-bfad-0f4fc58f13a0','2026-11-02',1,'X06c',20,NULL,'between 1989 and 2012','1989/2012',726103,734868,0,'words','fell out','part',NULL,18,'110 mm on top.');
INSERT INTO removal VALUES(12,'6f8bf6f0-7357-5529-8ed6-dd89e3de260e','2026-11-02',1,'X07c',22,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(13,'fde8e462-5c98-51a6-99cc-a4fd420d2137','2026-11-02',1,'X07a',22,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,12,NULL);
INSERT INTO removal VALUES(14,'c90d1954-3c4e-5af7-9f5a-b821b762813f','2026-11-02',1,'X07d',23,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,12,NULL);
INSERT INTO removal VALUES(15,'094c58a2-d52d-529c-ad0f-662bcde68ef9','2026-11-02',1,'X07b',24,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,12,NULL);
INSERT INTO removal VALUES(16,'629b2cfd-160f-5145-bb88-f814bb792b11','2026-11-02',1,'X09a',30,45,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,NULL);
INSERT INTO removal VALUES(17,'042ea61d-ca76-5e78-91d9-784930e3086f','2026-11-02',1,'X10a',32,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,3,NULL);
INSERT INTO removal VALUES(18,'9bd807c0-6234-5941-a6a6-7e9ddfbe829b','2026-11-02',1,'X10b',33,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(19,'6ac77e31-1b6a-581d-a756-bd1455b90da9','2026-11-02',1,'X10c',34,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,'Sawn and brushed off both faces.');
INSERT INTO removal VALUES(20,'7a5fa079-6bd9-5618-8f94-c2bae7fc65b6','2026-11-02',1,'X11a',35,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(21,'8f72fbeb-233a-50e7-8aa1-bab3508d969c','2026-11-02',1,'X11b',36,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(22,'ed2fc75c-855a-5e4c-b7f2-fd716b7e9791','2026-11-02',1,'X11c',37,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,11,NULL);
INSERT INTO removal VALUES(23,'bbf47592-34b9-5936-96e7-e87daad8625b','2026-11-02',1,'X12a',39,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(24,'dae0a51c-f166-5814-98a0-a76f33dfd3a7','2026-11-02',1,'X12b',40,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(25,'6ee9894f-22af-5682-9073-56881e10ea0c','2026-11-02',1,'X12c',41,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,11,NULL);
INSERT INTO removal VALUES(26,'960f02be-1b20-5a89-b6f9-a821c459209c','2026-11-02',1,'X13a',43,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(27,'09ee4cd8-9452-5554-8f93-dbc30feb5c62','2026-11-02',1,'X13b',43,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(28,'6a686d1e-615a-5f1d-b76e-9b1c06e3b21f','2026-11-02',1,'X13c',44,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(29,'83adc179-db47-59b0-83d5-242967a134fd','2026-11-02',1,'X13d',45,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(30,'fea735c8-5050-593c-9e04-07fafec7a78e','2026-11-02',1,'X14a',51,13,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,8,'An inch deep, front and left; the ledger says all.');
INSERT INTO removal VALUES(31,'902f8647-6046-5c43-ab2e-c5b6643247b0','2026-11-02',1,'X14b',52,45,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part','A',18,'Pared back on the lip only; the dolphin''s edge was too thin to risk.');
INSERT INTO removal VALUES(32,'5b6df460-a11d-5179-bbf9-b2d0ea03f33c','2026-11-02',1,'X15a',56,NULL,'[1934-08..1947-07]','[1934-08..1947-07]',706226,710973,0,'edtf','fell out','part',NULL,9,'Went with the fin.');
INSERT INTO removal VALUES(33,'64adfb6e-d2e6-5398-b3d3-58959c95bd01','2026-11-02',1,'X15b',57,NULL,'1971','1971',719528,719892,0,'edtf','failed','part',NULL,18,NULL);
INSERT INTO removal VALUES(34,'006ce80e-499b-544d-ad24-194932426172','2026-11-02',1,'X16a',58,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(35,'b8bf5499-31b7-50ac-8c45-c24ac1fb9638','2026-11-02',1,'X16b',58,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(36,'879b3e12-a5a7-59e7-9f5f-16e84276c974','2026-11-02',1,'X16c',59,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(37,'49caf14b-2840-5c5d-b32a-6425869c3609','2026-11-02',1,'X16d',60,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(38,'8479ff7c-6f16-5012-b7cc-b1b09dff5396','2026-11-02',1,'X16e',62,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,'Came off the lip as one sheet.');
INSERT INTO removal VALUES(39,'616a36e0-4a15-51d4-a36c-24ddac1200d1','2026-11-02',1,'X16f',61,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,'Off the face; what is in the stone is M06.');
INSERT INTO removal VALUES(40,'9428ec54-2bb4-5a88-8304-6adbf48f529d','2026-11-02',1,'X16g',63,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(41,'0a4f1fbd-89a6-5de7-8644-f76e10969de2','2026-11-02',1,'X17a',68,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(42,'3674f87d-8afa-58bb-9cc3-e38434b0c49b','2026-11-02',1,'X17b',68,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(43,'485d797b-91ea-5f2a-bda5-0f845046314a','2026-11-02',1,'X17c',69,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(44,'2c69804a-f278-5bb1-bce7-77356455c741','2026-11-02',1,'X17d',70,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(45,'f52936c2-e6a5-52f1-b54f-de2c2ea86a05','2026-11-02',1,'X17e',72,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part','A',18,'Pared to a skin where it had pulled stone.');
INSERT INTO removal VALUES(46,'f28ac71e-ec67-59dd-8811-9f5e83936895','2026-11-02',1,'X17f',72,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all','B',18,NULL);
INSERT INTO removal VALUES(47,'b7392371-e5b7-5024-869a-f9bcf490d7c3','2026-11-02',1,'X17g',73,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(48,'f940a3dc-7ecb-50f4-8c89-578692056c3b','2026-11-02',1,'X18a',78,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(49,'b1671db0-3b2d-54c1-9782-4aea9465b6bd','2026-11-02',1,'X18b',78,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(50,'81100b22-4e9f-5f49-a257-22d2cebaabbf','2026-11-02',1,'X18c',79,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(51,'b63fe17e-61dd-5c7b-943f-695ac7309905','2026-11-02',1,'X18d',80,31,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,15,NULL);
INSERT INTO removal VALUES(52,'d49d8b3a-f490-5acf-a4bf-ea01e748c242','2026-11-02',1,'X19a',84,25,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,12,'"Scraped the brown off."');
INSERT INTO removal VALUES(53,'f6f5d174-100e-5795-808a-df4b576786b2','2026-11-02',1,'X20a',86,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(54,'1ea36b78-8ce6-50f4-aa41-a8bf176046aa','2026-11-02',1,'X20b',87,NULL,'1944/1958','1944/1958',709666,715144,0,'edtf','weathered','part','A',11,NULL);
INSERT INTO removal VALUES(55,'37657548-cb0e-5b1e-9918-53bb413a729b','2026-11-02',1,'X22a',90,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(56,'7a9fbea8-6a9f-5fe2-92e7-0760015b2061','2026-11-02',1,'X23a',92,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,3,NULL);
INSERT INTO removal VALUES(57,'49300a6b-2a6b-5b81-b9ee-6a79b51995df','2026-11-02',1,'X25a',96,48,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,NULL);
INSERT INTO removal VALUES(58,'2dc741fb-313a-5fd0-816e-4226bad6fa3c','2026-11-02',1,'X25b',97,48,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(59,'34c3c00c-08bd-5c16-85e5-a839d48d82b8','2026-11-02',1,'X28a',101,48,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(60,'949b3823-7487-5c56-b08c-4432570ed04a','2026-11-02',1,'X28b',102,48,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,NULL);
INSERT INTO removal VALUES(61,'47db9c53-679e-5a29-8100-7bc9773021bd','2026-11-02',1,'X29a',103,48,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part','B',18,'The lead stays in the wall, the armature''s half came out.');
INSERT INTO removal VALUES(62,'fdb83b51-fbd0-5094-8ede-a1b3ccfecd9d','2026-11-02',1,'X31a',105,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,3,NULL);
INSERT INTO removal VALUES(63,'5d27927a-362e-5daa-a657-207cf007acfd','2026-11-02',1,'X32a',107,5,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,3,NULL);
INSERT INTO removal VALUES(64,'c899718a-d91b-5850-9c18-aa9b99deb398','2026-11-02',1,'X33a',109,22,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,12,NULL);
INSERT INTO removal VALUES(65,'f7307f6d-be20-5b15-a9c8-6be1de516bb0','2026-11-02',1,'X38a',117,19,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,11,NULL);
INSERT INTO removal VALUES(66,'dd33b7c4-c926-59cb-9c89-214a2ee34db3','2026-11-02',1,'X44a',125,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(67,'2893a0d9-f0e9-5628-8ea4-09eb3d1d3f94','2026-11-02',1,'X47a',129,42,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,NULL);
INSERT INTO removal VALUES(68,'9c32a8e4-b3db-51ea-9f0d-907cd8073767','2026-11-02',1,'XS1a',137,12,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,8,NULL);
INSERT INTO removal VALUES(69,'112ab142-d42a-572e-ab3e-e5b4c30ac340','2026-11-02',1,'XS1b',139,27,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,13,NULL);
INSERT INTO removal VALUES(70,'9394cf4f-8bd7-5e5a-b6fa-a80840fda57e','2026-11-02',1,'XS2a',140,11,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,8,NULL);
INSERT INTO removal VALUES(71,'3fd78fde-35b1-5428-9a94-eeb2b8c2e322','2026-11-02',1,'XS2b',141,11,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,8,NULL);
INSERT INTO removal VALUES(72,'df7c009c-e035-5ced-9770-6db0151ce1ef','2026-11-02',1,'XS2c',143,NULL,'1989/2011','1989/2011',726103,734502,0,'edtf','fell out','part',NULL,18,NULL);
INSERT INTO removal VALUES(73,'ca9fb4e7-c9e8-5334-b91f-7f34bc303bad','2026-11-02',1,'XS3a',147,12,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,8,NULL);
INSERT INTO removal VALUES(74,'79f22072-47fe-5a1d-bff1-3c7920e0c0a9','2026-11-02',1,'XS3b',148,27,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,13,NULL);
INSERT INTO removal VALUES(75,'468dafb5-b234-5d7d-a413-bea7bed5d703','2026-11-02',1,'XS4a',149,28,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,13,NULL);
INSERT INTO removal VALUES(76,'6d208814-b897-5449-b794-692e5619c135','2026-11-02',1,'XS4b',150,28,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,13,'No readings, so no result.');
INSERT INTO removal VALUES(77,'6f53cdf0-b92e-5e77-9028-4c722ba4d6da','2026-11-02',1,'XS5a',151,11,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,8,NULL);
INSERT INTO removal VALUES(78,'7872789b-26ff-5ba4-8fa6-a27177d402c2','2026-11-02',1,'XS6a',154,11,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,8,NULL);
INSERT INTO removal VALUES(79,'98ef7e46-d597-5bdd-ae2f-f3c9e59e1dc7','2026-11-02',1,'XS6b',155,11,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,8,NULL);
INSERT INTO removal VALUES(80,'ea1c672e-1c7c-5f74-b52a-6fe2f3a22cea','2026-11-02',1,'XS7a',157,NULL,'before 1896','../1895',-9000000,692134,0,'words','weathered','part',NULL,5,'The plate shows bare flutes right of the middle.');
INSERT INTO removal VALUES(81,'485ddb0f-9836-5923-bfb4-0a166861e09d','2026-11-02',1,'XS7b',159,NULL,'1989/2012','1989/2012',726103,734868,0,'edtf','faded','part',NULL,18,NULL);
INSERT INTO removal VALUES(82,'d87ab62f-94dd-5f83-9c65-a278adc0dc36','2026-11-02',1,'XS8a',163,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,'Left in the beard on purpose.');
INSERT INTO removal VALUES(83,'c4a93e81-4d37-53a9-abee-e026f90134c8','2026-11-02',1,'XS8b',164,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(84,'3d6c4bc5-1b7b-5ba2-bcc9-29e0f8f53891','2026-11-02',1,'XS9a',167,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(85,'d2e12e9f-0476-599a-bc67-90f911f3b987','2026-11-02',1,'XS9b',168,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(86,'3dd65ae1-6d90-5c15-9cf7-a35e0a08d294','2026-11-02',1,'XS10a',171,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,'Stopped when the steam trial clouded the patina.');
INSERT INTO removal VALUES(87,'9955efd2-007d-5540-af37-b295fd6491b9','2026-11-02',1,'XS10b',172,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(88,'a6a1054c-58d0-5aa3-9dab-9ab0d0c77ca0','2026-11-02',1,'XS11a',175,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(89,'c4c72369-72db-5754-8b14-8ab27326f76a','2026-11-02',1,'XS11b',176,46,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,18,NULL);
INSERT INTO removal VALUES(90,'091ec1ac-7a14-5969-bb0a-21826ec9c52f','2026-11-02',1,'XC2a',183,38,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,18,'The rag was drawn out with tweezers.');
INSERT INTO removal VALUES(91,'00895440-e6c1-5113-8d3f-433867fb90e9','2026-11-02',3,'X1',187,NULL,'1958','1958',714780,715144,0,'edtf','failed','part',NULL,28,NULL);
INSERT INTO removal VALUES(92,'bb3ae206-f5f9-53d1-8421-e2d4990fd16c','2026-11-02',3,'X2',189,NULL,'between 1896 and 1907','1896/1907',692135,696516,0,'words','failed','part',NULL,23,NULL);
INSERT INTO removal VALUES(93,'1aafd745-c43c-5325-a580-03875ef746a9','2026-11-02',3,'X3',191,58,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,44,NULL);
INSERT INTO removal VALUES(94,'d145261c-8495-5c33-acb9-b965f904f96f','2026-11-02',3,'X4',192,57,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,44,'Under ultraviolet, none left.');
INSERT INTO removal VALUES(95,'03085b31-84bd-5309-87a0-077ba399d0b7','2026-11-02',3,'X5',193,57,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,44,'Front only.');
INSERT INTO removal VALUES(96,'9218835e-dbee-5dfc-8378-8c0c32eb7fc3','2026-11-02',4,'X1',199,62,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,29,NULL);
INSERT INTO removal VALUES(97,'875dc76e-7173-54d8-b87b-4e05874a2b16','2026-11-02',4,'X2',200,62,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,29,'Scraped.');
INSERT INTO removal VALUES(98,'7c7cd83f-5e27-5b81-a5a1-60a3e24eef38','2026-11-02',4,'X3',201,65,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,35,'Swollen at the edge, would not move inside.');
INSERT INTO removal VALUES(99,'9588ad88-0a42-5435-adf6-84c436f3af3f','2026-11-02',4,'X4',203,NULL,'1973/1979','1973/1979',720259,722814,0,'edtf','failed','part',NULL,35,NULL);
INSERT INTO removal VALUES(100,'e10a854a-a2d4-55a9-9fe4-6a8a4d627efb','2026-11-02',5,'X1',216,78,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,39,NULL);
INSERT INTO removal VALUES(101,'4b5ba99a-861b-53cc-bec9-a005a91d76c4','2026-11-02',5,'X2',217,78,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,39,NULL);
INSERT INTO removal VALUES(102,'9d784b56-d836-51ed-95a0-ed1384a2f35f','2026-11-02',5,'X3',215,78,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,39,'Readings after cleaning were within a tenth of those before.');
INSERT INTO removal VALUES(103,'f189d6e3-9690-5d7a-abb8-fd45f5f18e89','2026-11-02',6,'X1',224,83,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,26,'"Burnt off what would burn."');
INSERT INTO removal VALUES(104,'ec10a1a8-3257-521c-9dd9-95a58799ef15','2026-11-02',6,'X2',225,90,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,38,'Fell to crumbs.');
INSERT INTO removal VALUES(105,'edddbad7-3171-58cf-b42a-36f7ce11c3ee','2026-11-02',6,'X3',227,88,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,38,'The window on the left cheek.');
INSERT INTO removal VALUES(106,'3db90807-765b-5768-9bf2-c95d63e50aca','2026-11-02',6,'X4',222,88,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,38,'Half of the window.');
INSERT INTO removal VALUES(107,'ae0e634a-39ec-5d16-9c14-bbf59279769e','2026-11-02',6,'X5',220,NULL,'1838/1880','1838/1880',670951,686656,0,'edtf','weathered','part',NULL,38,NULL);
INSERT INTO removal VALUES(108,'2b6f0589-d578-5324-a3d5-bb66b07e61c4','2026-11-02',7,'X1',240,96,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,32,NULL);
INSERT INTO removal VALUES(109,'002263cc-25eb-5c22-8448-91d3682256b9','2026-11-02',7,'X2',241,96,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,32,NULL);
INSERT INTO removal VALUES(110,'1ff3aa66-aadb-5ccc-8c3f-3d3b3971c7ea','2026-11-02',7,'X3',242,96,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,32,NULL);
INSERT INTO removal VALUES(111,'7306d1a3-95a3-579d-a34b-f09cfcce20db','2026-11-02',7,'X4',242,98,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,36,NULL);
INSERT INTO removal VALUES(112,'967a2c1a-4660-53fc-aa25-9e158686b5d5','2026-11-02',7,'X5',243,98,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,36,NULL);
INSERT INTO removal VALUES(113,'04a8abf4-0842-5480-85b6-982599fa4b92','2026-11-02',7,'X6',244,98,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,36,NULL);
INSERT INTO removal VALUES(114,'bf495c39-afbd-55bf-a914-56612f6388c4','2026-11-02',7,'X7',237,NULL,'between 1911 and 1973','1911/1973',697613,720623,0,'words','failed','part',NULL,32,NULL);
INSERT INTO removal VALUES(115,'2863fc23-8583-501a-87c6-26203a0b1d07','2026-11-02',8,'X1',249,NULL,'1993','1993',727564,727928,0,'edtf','fell out','part',NULL,41,NULL);
INSERT INTO removal VALUES(116,'a9b1a64c-3e42-54d0-96ce-07975087e942','2026-11-02',8,'X2',254,106,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,41,NULL);
INSERT INTO removal VALUES(117,'bc9711db-7d7a-560a-b730-3144af0233e7','2026-11-02',8,'X3',256,NULL,'1993','1993',727564,727928,0,'edtf','fell out','part',NULL,41,'Went down with the pane; a strip still sits on the frame.');
INSERT INTO removal VALUES(118,'b956551c-2b11-520b-89ef-4ec59ff86a46','2026-11-02',8,'X4',247,NULL,'1949/1991','1949/1991',711493,727197,0,'edtf','fell out','part',NULL,41,NULL);
INSERT INTO removal VALUES(119,'ec1f7254-8307-58ee-a13e-f9ebb2e941b7','2026-11-02',9,'X1',261,NULL,'2017-10','2017-10',736603,736633,0,'edtf','failed','part',NULL,40,NULL);
INSERT INTO removal VALUES(120,'d06d4bda-14a3-514c-8225-54c1a6fd99e9','2026-11-02',9,'X2',263,115,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,'Left in the hair.');
INSERT INTO removal VALUES(121,'7d1113aa-7c7c-5077-9b1f-c3ef2af4949b','2026-11-02',9,'X3',260,115,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,'Steam took some of the sealing with it; the card is sorry.');
INSERT INTO removal VALUES(122,'602ce76a-c42f-5b5d-905e-eb05ca8e5f1e','2026-11-02',9,'X4',269,NULL,'2018','2018',736695,737059,0,'edtf','brushed off, no record by whom','part',NULL,40,NULL);
INSERT INTO removal VALUES(123,'7f3717b8-4ef7-53dc-8c23-b511d8f8fd96','2026-11-02',10,'X1',270,121,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,29,NULL);
INSERT INTO removal VALUES(124,'9d75e069-dc44-5475-9aad-f9ee63ee1c29','2026-11-02',10,'X2',271,121,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,29,NULL);
INSERT INTO removal VALUES(125,'954ea8c3-d501-5242-8762-c5b847351747','2026-11-02',10,'X3',272,121,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,29,NULL);
INSERT INTO removal VALUES(126,'afc523e8-91bf-5608-9704-b366f4c620a3','2026-11-02',10,'X4',274,124,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,34,NULL);
INSERT INTO removal VALUES(127,'62e84f24-1a56-5677-a13e-2fb27031646e','2026-11-02',10,'X5',275,124,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,34,NULL);
INSERT INTO removal VALUES(128,'5f47a841-67ab-52d9-9e57-a22fc016b4ee','2026-11-02',10,'X6',273,NULL,'1970/1982','1970/1982',719163,723910,0,'edtf','failed','part',NULL,34,NULL);
INSERT INTO removal VALUES(129,'913f19f8-da14-5fe2-b0a7-faddff79cd2f','2026-11-02',11,'X1',287,132,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,31,NULL);
INSERT INTO removal VALUES(130,'5a8c0811-75b5-50ca-b481-040443e869f7','2026-11-02',11,'X2',291,134,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,31,NULL);
INSERT INTO removal VALUES(131,'2b2947cd-09be-5739-b11c-8fd324bf8b8e','2026-11-02',12,'X1',295,139,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,29,NULL);
INSERT INTO removal VALUES(132,'fbd8f003-b756-523c-bb9b-8aeb9e91cfd2','2026-11-02',12,'X2',303,142,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,31,NULL);
INSERT INTO removal VALUES(133,'f74de47f-f4cf-5615-a72f-3f1fa55a179f','2026-11-02',12,'X3',305,141,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,31,NULL);
INSERT INTO removal VALUES(134,'8bda129b-9fe4-55d6-a0d9-5407bf57cb5e','2026-11-02',13,'X1',309,147,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,28,'Polished bright.');
INSERT INTO removal VALUES(135,'0ccdc06d-6711-59f2-b548-508b6ae40417','2026-11-02',13,'X2',310,151,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,41,NULL);
INSERT INTO removal VALUES(136,'58bb1f9d-351b-5db2-b1a8-2bfd0b3b5763','2026-11-02',13,'X3',312,150,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,41,NULL);
INSERT INTO removal VALUES(137,'dd861cdd-b690-52a8-887c-bb3cb8d76196','2026-11-02',13,'X4',315,NULL,'before 2021','../2020',-9000000,737790,0,'words','worn away','all',NULL,41,NULL);
INSERT INTO removal VALUES(138,'92dec605-8b30-55e2-a98a-b9f01535dd07','2026-11-02',13,'X5',308,145,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,26,NULL);
INSERT INTO removal VALUES(139,'bc090c19-658a-5f74-8f3b-2bf6fc9c8269','2026-11-02',2,'X07a',322,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,'"Scraped till they shut."');
INSERT INTO removal VALUES(140,'c420903b-f204-56db-9c7d-fd84d22dbe33','2026-11-02',2,'X08a',323,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,NULL);
INSERT INTO removal VALUES(141,'cf8eeaac-4f08-5626-b548-9a37bd00b582','2026-11-02',2,'X09a',324,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,NULL);
INSERT INTO removal VALUES(142,'770f1e42-fb41-5947-a05e-d2834f2f2044','2026-11-02',2,'X10a',325,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,NULL);
INSERT INTO removal VALUES(143,'fd10ab39-1735-50fc-a246-a49e80bf4747','2026-11-02',2,'X11a',326,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,NULL);
INSERT INTO removal VALUES(144,'c9773cdb-b6d3-5f45-a53b-e4d8af7cbd85','2026-11-02',2,'X12a',327,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,28,NULL);
INSERT INTO removal VALUES(145,'ffe5f7d1-844e-5760-89da-3995a7c9a167','2026-11-02',2,'X13a',328,161,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,NULL);
INSERT INTO removal VALUES(146,'e8f5945d-b295-5299-b86f-686f803bff53','2026-11-02',2,'X14a',329,161,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,NULL);
INSERT INTO removal VALUES(147,'ca5511d7-ada9-5e6e-a6a3-f93714a3101e','2026-11-02',2,'X15a',330,161,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,NULL);
INSERT INTO removal VALUES(148,'cd471da5-1cdb-5b3b-a219-bacce789a247','2026-11-02',2,'X16a',331,161,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,NULL);
INSERT INTO removal VALUES(149,'396be61c-274a-5963-ab01-41bd981dee63','2026-11-02',2,'X17a',332,161,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,30,NULL);
INSERT INTO removal VALUES(150,'f39b2462-d39c-5d11-9217-5b547fe15bd0','2026-11-02',2,'X07b',334,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,33,NULL);
INSERT INTO removal VALUES(151,'fe60ba90-b38b-5de7-ad47-a546d80b7269','2026-11-02',2,'X07c',322,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,33,'A brown line stays in the body.');
INSERT INTO removal VALUES(152,'5f61c9c0-1aaf-5a8c-b1be-11a57f87e84a','2026-11-02',2,'X08b',335,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,33,NULL);
INSERT INTO removal VALUES(153,'878562ab-2b50-506f-946f-960baf54dc28','2026-11-02',2,'X08c',323,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,33,NULL);
INSERT INTO removal VALUES(154,'4219cec5-23a1-5346-92a4-91fa7232a4ca','2026-11-02',2,'X09b',336,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,33,NULL);
INSERT INTO removal VALUES(155,'aa32557b-9e53-5c81-be89-ec175449fe95','2026-11-02',2,'X09c',324,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,33,NULL);
INSERT INTO removal VALUES(156,'9ac273c8-eb37-53d5-9d58-2fd530d23312','2026-11-02',2,'X10b',337,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,33,NULL);
INSERT INTO removal VALUES(157,'e79eed6f-efbf-5f04-b2b5-b9d06cca01d5','2026-11-02',2,'X10c',325,167,NULL,NULL,-8000000,8000000,0,'blank',NULL,'attempted',NULL,33,NULL);
INSERT INTO removal VALUES(158,'334050ea-1f9d-52ea-a624-7dc0420ff3bf','2026-11-02',2,'X21a',356,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,28,NULL);
INSERT INTO removal VALUES(159,'01c71f7e-2a16-5513-a79b-4e8b1191fe89','2026-11-02',2,'X22a',357,159,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,28,NULL);
INSERT INTO removal VALUES(160,'cec7b30e-19ac-5c7c-a4a5-6d7a0cf1d35d','2026-11-02',2,'XS1a',358,165,NULL,NULL,-8000000,8000000,0,'blank',NULL,'all',NULL,33,NULL);
INSERT INTO removal VALUES(161,'ef07df14-5fcc-53c0-ae35-9f90e3871380','2026-11-02',2,'XS1b',359,165,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,33,'Left on the plaster handle side.');
INSERT INTO removal VALUES(162,'80cd3f3c-304b-5a30-aad8-792980e1307b','2026-11-02',2,'XS2a',360,165,NULL,NULL,-8000000,8000000,0,'blank',NULL,'part',NULL,33,NULL);
CREATE TABLE sighting (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	object_id INTEGER NOT NULL, 
	ref TEXT NOT NULL, 
	layer_id INTEGER NOT NULL, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	result TEXT, 
	side TEXT, 
	source_id INTEGER, 
	note TEXT, 
	CONSTRAINT ck_sighting_result_known CHECK (result IN ('seen', 'not found', 'not accessible')), 
	CONSTRAINT ck_sighting_side_known CHECK (side IN ('A', 'B')), 
	CONSTRAINT ck_sighting_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT fk_sighting_object_id_layer_id FOREIGN KEY(object_id, layer_id) REFERENCES layer (object_id, id), 
	CONSTRAINT fk_sighting_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_sighting_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT uq_sighting_object_id_ref UNIQUE (object_id, ref), 
	CONSTRAINT uq_sighting_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO sighting VALUES(1,'4928b0d1-488b-558b-af46-8c5a1204414d','2026-11-02',1,'Y01',8,'1958-04-05','1958-04-05',714874,714874,0,'edtf','not found',NULL,11,'"No cement under this half, only the old yellow bed."');
INSERT INTO sighting VALUES(2,'534d92ee-8711-50a3-b883-8cab2beaf157','2026-11-02',1,'Y02',138,'1957-09','1957-09',714658,714687,0,'edtf','seen',NULL,10,NULL);
INSERT INTO sighting VALUES(3,'15148ba5-0270-5ef6-a2f5-b8e89ccebc45','2026-11-02',1,'Y03',149,'1957-09','1957-09',714658,714687,0,'edtf','seen',NULL,10,'A pale band on the back slab.');
INSERT INTO sighting VALUES(4,'08d41a84-ad19-514f-b0ad-e13f7cee0d23','2026-11-02',1,'Y04',52,'1989-03-14','1989-03-14',726175,726175,0,'edtf','seen',NULL,15,NULL);
INSERT INTO sighting VALUES(5,'ad21dd28-e1b4-503f-92bb-92ad74b64812','2026-11-02',1,'Y05',87,'1989-05-04','1989-05-04',726226,726226,0,'edtf','seen','A',15,'Ring on the empty seat.');
INSERT INTO sighting VALUES(6,'37835e48-9268-5121-a54c-be5e04f672f8','2026-11-02',1,'Y06',88,'1989-05-04','1989-05-04',726226,726226,0,'edtf','seen',NULL,15,NULL);
INSERT INTO sighting VALUES(7,'2cc0c160-614f-54ba-811d-b2face05f1cf','2026-11-02',1,'Y07',111,'2011-10-04','2011-10-04',734414,734414,0,'edtf','seen',NULL,17,'Plate 3.');
INSERT INTO sighting VALUES(8,'85306df9-5e3c-5274-9da8-62d55f3b960c','2026-11-02',1,'Y08',113,'2011-10-04','2011-10-04',734414,734414,0,'edtf','seen',NULL,17,'Plate 6.');
INSERT INTO sighting VALUES(9,'4f57216a-b607-54a7-b1aa-ef197886f471','2026-11-02',1,'Y09',114,'2011-10-04','2011-10-04',734414,734414,0,'edtf','seen',NULL,17,'Plate 6.');
INSERT INTO sighting VALUES(10,'6ef64b6f-5721-5268-ab66-b6f6a3eb994a','2026-11-02',1,'Y10',134,'2011-10-04','2011-10-04',734414,734414,0,'edtf','seen',NULL,17,'A line, no more.');
INSERT INTO sighting VALUES(11,'ce34a3f0-5203-5226-a83e-7e4518db8b6f','2026-11-02',1,'Y11',135,'2011-10-04','2011-10-04',734414,734414,0,'edtf','not accessible',NULL,17,'The cramp''s lead lies over it.');
INSERT INTO sighting VALUES(12,'a148a9e2-3883-5cab-a1f9-beceda1637ad','2026-11-02',1,'Y12',98,'2011-10-04','2011-10-04',734414,734414,0,'edtf','not accessible',NULL,17,'The bronze is too thick at the ears.');
INSERT INTO sighting VALUES(13,'bbfb6918-d21d-5835-9033-266c0ee921a5','2026-11-02',1,'Y13',33,'2011-09-26','2011-09-26',734406,734406,0,'edtf','seen','A',18,NULL);
INSERT INTO sighting VALUES(14,'7c2f1101-2004-5860-96ec-ee7f4b64bc00','2026-11-02',1,'Y14',32,'2011-09-26','2011-09-26',734406,734406,0,'edtf','not found',NULL,18,NULL);
INSERT INTO sighting VALUES(15,'cc969b92-89b1-5eb2-b9db-85b1dc1626a7','2026-11-02',1,'Y15',144,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen',NULL,18,'At S02 only; infrared could not name it.');
INSERT INTO sighting VALUES(16,'3f0c56f2-ee78-5317-82f6-67ed7ca03a2e','2026-11-02',1,'Y16',55,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen','A',18,'Brown film, purple in the stone beneath.');
INSERT INTO sighting VALUES(17,'b6664b10-9e3d-5a3a-91b3-119f0d5015c2','2026-11-02',1,'Y17',55,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen','B',18,NULL);
INSERT INTO sighting VALUES(18,'51a62808-07dd-5e08-88f7-507c6b845ff6','2026-11-02',1,'Y18',56,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen','A',18,'Spots the size of lentils.');
INSERT INTO sighting VALUES(19,'439357a3-3400-5738-bf55-b54721899dae','2026-11-02',1,'Y19',57,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen','B',18,'Infrared: cellulose nitrate.');
INSERT INTO sighting VALUES(20,'a45c7d89-e9ff-53a1-b325-cb9a0da905d0','2026-11-02',1,'Y20',180,'2012-01-18','2012-01-18',734520,734520,0,'edtf','seen',NULL,18,NULL);
INSERT INTO sighting VALUES(21,'0e33ff0a-a884-5fb5-8b7a-285b9fd03797','2026-11-02',1,'Y21',61,'2012-02-14','2012-02-14',734547,734547,0,'edtf','seen','A',18,'Whole and clear.');
INSERT INTO sighting VALUES(22,'bd0a0cd0-4a83-5be4-95f6-1c3152d1ccfa','2026-11-02',1,'Y22',63,'2012-02-14','2012-02-14',734547,734547,0,'edtf','seen','B',18,'Whole and clear.');
INSERT INTO sighting VALUES(23,'aa6a33c1-14d0-5a39-b179-b594688cbe68','2026-11-02',1,'Y23',124,'2012-02-14','2012-02-14',734547,734547,0,'edtf','seen',NULL,18,'Threads printed in the resin, unbroken.');
INSERT INTO sighting VALUES(24,'ff394171-34c9-5ecc-8be8-5c1182a62a61','2026-11-02',1,'Y24',71,'2012-02-21','2012-02-21',734554,734554,0,'edtf','not found',NULL,18,'Resin on bare stone wherever the stone was pulled.');
INSERT INTO sighting VALUES(25,'b4446971-7942-53d1-bcf5-8d1edbd93a79','2026-11-02',1,'Y25',73,'2012-02-21','2012-02-21',734554,734554,0,'edtf','seen','B',18,'Milky, soft under a nail.');
INSERT INTO sighting VALUES(26,'39aa4580-b1da-5811-9f71-bad9fbeb4f7f','2026-11-02',1,'Y26',49,'2012-05-09','2012-05-09',734632,734632,0,'edtf','seen',NULL,18,'Back edge, firm.');
INSERT INTO sighting VALUES(27,'e76d9788-6ba1-53af-96fe-d4e487f9e2de','2026-11-02',1,'Y27',50,'2012-05-09','2012-05-09',734632,734632,0,'edtf','not accessible','A',18,'The gap is too narrow for the endoscope.');
INSERT INTO sighting VALUES(28,'56bcdf70-b214-50f3-b3b6-0c13e6e75254','2026-11-02',1,'Y28',51,'2012-05-09','2012-05-09',734632,734632,0,'edtf','not found',NULL,18,NULL);
INSERT INTO sighting VALUES(29,'6eeab50e-1dd2-5448-99b0-8d215810a661','2026-11-02',1,'Y29',53,'2012-05-09','2012-05-09',734632,734632,0,'edtf','seen',NULL,18,'20 mm of it at the left edge.');
INSERT INTO sighting VALUES(30,'da88432d-e108-5da6-a1f1-6451a1d1b8f7','2026-11-02',1,'Y30',52,'2012-05-09','2012-05-09',734632,734632,0,'edtf','seen','B',18,NULL);
INSERT INTO sighting VALUES(31,'89267bf8-841e-5b8b-a077-eb7cc140f0ab','2026-11-02',1,'Y31',136,'2012-05-09','2012-05-09',734632,734632,0,'edtf','seen',NULL,18,NULL);
INSERT INTO sighting VALUES(32,'41c24938-d2f9-5023-8033-9bb7ad63dea0','2026-11-02',1,'Y32',85,'2012-05-10','2012-05-10',734633,734633,0,'edtf','seen',NULL,18,'Yellow line.');
INSERT INTO sighting VALUES(33,'a6cf8459-6379-543f-bd9b-3c39b176ba54','2026-11-02',1,'Y33',25,'2012-05-10','2012-05-10',734633,734633,0,'edtf','seen',NULL,18,NULL);
INSERT INTO sighting VALUES(34,'ff2266ad-f846-53d0-ab75-c0e15841a13a','2026-11-02',1,'Y34',90,'2012-06-14','2012-06-14',734668,734668,0,'edtf','seen',NULL,18,NULL);
INSERT INTO sighting VALUES(35,'c3f80f54-d049-569b-aa39-4c714cb36094','2026-11-02',1,'Y35',96,'2012-06-19','2012-06-19',734673,734673,0,'edtf','seen',NULL,18,'Still soft under the skin.');
INSERT INTO sighting VALUES(36,'252a42e0-fa6c-51a3-a301-378e93e0b0ef','2026-11-02',1,'Y36',182,'2012-06-14','2012-06-14',734668,734668,0,'edtf','seen',NULL,18,NULL);
INSERT INTO sighting VALUES(37,'5809f925-275f-573d-b915-ecc14f0db7db','2026-11-02',1,'Y37',157,'2026-10-19','2026-10-19',739908,739908,0,'edtf','seen',NULL,NULL,'Six flutes, before they were faced.');
INSERT INTO sighting VALUES(38,'6add0995-970f-5b93-bd5d-e8f192174634','2026-11-02',1,'Y38',163,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,'In the beard.');
INSERT INTO sighting VALUES(39,'3d202413-701b-509d-a01a-1155dd3860f4','2026-11-02',1,'Y39',165,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,NULL);
INSERT INTO sighting VALUES(40,'c8657385-26f0-509a-8e0b-ce3db6d8e3ff','2026-11-02',1,'Y40',52,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen','B',22,NULL);
INSERT INTO sighting VALUES(41,'f448fc64-8a18-56eb-91e7-e92b77d0f17c','2026-11-02',1,'Y41',53,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,NULL);
INSERT INTO sighting VALUES(42,'c49458d2-ae48-586d-b09c-6e348185a002','2026-11-02',1,'Y42',54,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,'Cracked at the front.');
INSERT INTO sighting VALUES(43,'5f6f9f7a-8056-507e-ae7a-80cc0ad88e24','2026-11-02',1,'Y43',50,'2026-09-15','2026-09-15',739874,739874,0,'edtf','not accessible','A',22,NULL);
INSERT INTO sighting VALUES(44,'9d13ca7f-be9f-5c33-bc30-b3d23a1b02d0','2026-11-02',1,'Y44',16,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,NULL);
INSERT INTO sighting VALUES(45,'6f3c52ab-e99a-505a-a410-bf912ac0f6df','2026-11-02',1,'Y45',149,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,'Fresh.');
INSERT INTO sighting VALUES(46,'217a8b2b-1d62-53d1-8a2f-8d6266f98600','2026-11-02',1,'Y46',139,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,NULL);
INSERT INTO sighting VALUES(47,'8aa29ed9-354d-5a43-80d1-40b029af5a0c','2026-11-02',1,'Y47',138,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,'Left half, a band below the rim.');
INSERT INTO sighting VALUES(48,'2ae2accb-c259-5c7f-9843-e9aa2bb9db84','2026-11-02',1,'Y48',19,'2026-09-15','2026-09-15',739874,739874,0,'edtf','seen',NULL,22,NULL);
INSERT INTO sighting VALUES(49,'805dd26f-0d27-53d3-a33b-c99168911a7d','2026-11-02',1,'Y49',81,'2026-09-16','2026-09-16',739875,739875,0,'edtf','not accessible','A',22,NULL);
INSERT INTO sighting VALUES(50,'8d7bb6ea-df9b-5c10-bea7-7d7e8880668f','2026-11-02',1,'Y50',82,'2026-09-16','2026-09-16',739875,739875,0,'edtf','seen',NULL,22,'At the right front corner.');
INSERT INTO sighting VALUES(51,'e1bc9190-0659-57c2-ac2a-2e81f0a5462d','2026-11-02',1,'Y51',3,'2026-09-15','2026-09-15',739874,739874,0,'edtf','not accessible',NULL,22,'Behind the frame foot.');
INSERT INTO sighting VALUES(52,'b7a6c029-c220-5059-9384-b7a70f1f7d72','2026-11-02',1,'Y52',13,'2026-09-15','2026-09-15',739874,739874,0,'edtf','not accessible',NULL,22,NULL);
INSERT INTO sighting VALUES(53,'dbb48e58-cc5d-530f-836c-fd7c650fe783','2026-11-02',3,'Y1',186,'2013-05-14','2013-05-14',735002,735002,0,'edtf','seen',NULL,37,'Protein bands.');
INSERT INTO sighting VALUES(54,'7ed9e1dd-f892-5888-bf27-7f2fd1befd67','2026-11-02',3,'Y2',194,'2013-05-14','2013-05-14',735002,735002,0,'edtf','seen',NULL,37,NULL);
INSERT INTO sighting VALUES(55,'c01c0596-01b3-5568-958e-dd952d011799','2026-11-02',3,'Y3',193,'2013-05-14','2013-05-14',735002,735002,0,'edtf','seen',NULL,37,'On the back.');
INSERT INTO sighting VALUES(56,'2aed6950-42ca-5dee-b09f-73eef522aabf','2026-11-02',3,'Y4',190,'1992-02-17','1992-02-17',727245,727245,0,'edtf','not found',NULL,44,'Nothing on the edge left behind.');
INSERT INTO sighting VALUES(57,'459ddf5a-4429-5783-8abd-eb8900c7dc75','2026-11-02',4,'Y1',201,'2003-07-14','2003-07-14',731410,731410,0,'edtf','seen',NULL,35,NULL);
INSERT INTO sighting VALUES(58,'799f521b-73ae-52fe-8441-d117005e0f00','2026-11-02',4,'Y2',200,'2003-07-14','2003-07-14',731410,731410,0,'edtf','not accessible',NULL,35,'Joint not opened.');
INSERT INTO sighting VALUES(59,'3f991cf1-506f-5958-9d6f-116aafecfccf','2026-11-02',4,'Y3',206,'2003-07-14','2003-07-14',731410,731410,0,'edtf','seen',NULL,35,NULL);
INSERT INTO sighting VALUES(60,'361bcba5-765b-5f27-b92d-1f3ffb92c70d','2026-11-02',4,'Y4',209,'2003-07-14','2003-07-14',731410,731410,0,'edtf','not found',NULL,35,NULL);
INSERT INTO sighting VALUES(61,'33c887d9-0df6-53d7-b43b-2968c90a0d63','2026-11-02',4,'Y5',209,'1946-09','1946-09',710640,710669,0,'edtf','seen','A',28,'"Brown stump."');
INSERT INTO sighting VALUES(62,'5491c15a-485f-5e5a-8a42-ddd93da911b2','2026-11-02',5,'Y1',215,'2015-02-24','2015-02-24',735653,735653,0,'edtf','seen',NULL,39,'S2 and M1.');
INSERT INTO sighting VALUES(63,'d49d1d94-22c8-5840-b1aa-6fd99faa30d2','2026-11-02',5,'Y2',219,'2015-02-24','2015-02-24',735653,735653,0,'edtf','seen',NULL,39,'A gloss in the worm channels; not tested.');
INSERT INTO sighting VALUES(64,'a5482dbc-7d0d-5ef1-818a-8e78e42cbbd2','2026-11-02',5,'Y3',218,'2015-02-24','2015-02-24',735653,735653,0,'edtf','seen',NULL,39,NULL);
INSERT INTO sighting VALUES(65,'7916fbe7-a414-5046-917a-7cf9f306726f','2026-11-02',5,'Y4',210,'2015-02-24','2015-02-24',735653,735653,0,'edtf','seen',NULL,39,NULL);
INSERT INTO sighting VALUES(66,'92895ac7-73e1-520a-a6eb-8e4fe43e1fa4','2026-11-02',6,'Y1',220,'2014-03','2014-03',735293,735323,0,'edtf','seen',NULL,38,'Sections 1 to 4.');
INSERT INTO sighting VALUES(67,'91bb05f4-8b52-59d4-880f-06ac07962dc1','2026-11-02',6,'Y2',224,'2014-03','2014-03',735293,735323,0,'edtf','seen',NULL,38,NULL);
INSERT INTO sighting VALUES(68,'9f575ceb-2e46-539d-af30-0c39971fdcaf','2026-11-02',6,'Y3',231,'2014-03','2014-03',735293,735323,0,'edtf','not found',NULL,38,'No smell, no bands.');
INSERT INTO sighting VALUES(69,'d54b5664-6ee3-5332-aa54-b8460d7a0b99','2026-11-02',6,'Y4',229,'2014-10','2014-10',735507,735537,0,'edtf','seen',NULL,38,'Shrunk 3 mm from the wood.');
INSERT INTO sighting VALUES(70,'5bfc2e9c-808b-5e2a-85e5-5331a9c117ab','2026-11-02',6,'Y5',232,'2014-05','2014-05',735354,735384,0,'edtf','not accessible',NULL,38,'Under the gloss.');
INSERT INTO sighting VALUES(71,'ae924f61-1b52-50f8-901a-230e0e7fe79e','2026-11-02',7,'Y1',240,'1994-02','1994-02',727960,727987,0,'edtf','seen',NULL,32,'Brown along the engraving.');
INSERT INTO sighting VALUES(72,'78cb392c-c045-5dff-b6d1-2e2e751af75f','2026-11-02',7,'Y2',245,'2024-01-22','2024-01-22',738907,738907,0,'edtf','seen',NULL,NULL,'Whole, one bare spot under the left handle.');
INSERT INTO sighting VALUES(73,'4e1d4fee-c1f5-55c3-a062-69ef7152d20e','2026-11-02',7,'Y3',246,'2024-01-22','2024-01-22',738907,738907,0,'edtf','seen',NULL,NULL,NULL);
INSERT INTO sighting VALUES(74,'f6de6548-4ce8-559e-9a45-5d6152554290','2026-11-02',7,'Y4',243,'2008-11-05','2008-11-05',733351,733351,0,'edtf','not found',NULL,36,'Water breaks evenly.');
INSERT INTO sighting VALUES(75,'66b27575-77f9-5d58-8410-5f5e09b25d6f','2026-11-02',8,'Y1',255,'2021-06-08','2021-06-08',737949,737949,0,'edtf','seen',NULL,41,'Left: the pane was tight.');
INSERT INTO sighting VALUES(76,'a81712f3-8377-5172-bfed-e892357928df','2026-11-02',8,'Y2',251,'2021-07','2021-07',737972,738002,0,'edtf','seen',NULL,41,NULL);
INSERT INTO sighting VALUES(77,'cbe9c365-10d8-58f1-977a-68f3b264c6ed','2026-11-02',8,'Y3',250,'2021-07','2021-07',737972,738002,0,'edtf','not accessible',NULL,41,'Under paint.');
INSERT INTO sighting VALUES(78,'5d65b7f7-562c-5063-8173-e3d493baf60c','2026-11-02',9,'Y1',260,'2018-03','2018-03',736754,736784,0,'edtf','seen',NULL,40,NULL);
INSERT INTO sighting VALUES(79,'6ffbadcd-b745-560a-859d-bde2ccd19da5','2026-11-02',9,'Y2',265,'2018-03','2018-03',736754,736784,0,'edtf','seen',NULL,40,'A drop of water no longer softens it.');
INSERT INTO sighting VALUES(80,'a679c8f0-13cd-539c-8a20-db58bbcfb9e0','2026-11-02',9,'Y3',264,'2018-03','2018-03',736754,736784,0,'edtf','seen',NULL,40,NULL);
INSERT INTO sighting VALUES(81,'a8bbaf78-ea13-5c6a-be7e-c69e42a53d2a','2026-11-02',9,'Y4',263,'2018-03','2018-03',736754,736784,0,'edtf','seen',NULL,40,'In the hair.');
INSERT INTO sighting VALUES(82,'dc9ed0e7-f8f1-5d3d-93f6-79a179f4d325','2026-11-02',10,'Y1',272,'1998-02-23','1998-02-23',729443,729443,0,'edtf','not accessible',NULL,34,NULL);
INSERT INTO sighting VALUES(83,'c4f02235-7417-520a-aa20-be5c5d43a0b8','2026-11-02',10,'Y2',277,'2026-05-28','2026-05-28',739764,739764,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(84,'27344c13-1c26-510b-9f90-56b59f8c8186','2026-11-02',10,'Y3',278,'2026-05-28','2026-05-28',739764,739764,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(85,'c6a4e6dc-c0f6-5fec-ab3e-7f1df985bfe9','2026-11-02',10,'Y4',276,'2026-05-28','2026-05-28',739764,739764,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(86,'42084e02-1c12-5219-9a61-5f8503ab902a','2026-11-02',10,'Y5',274,'1998-02-25','1998-02-25',729445,729445,0,'edtf','not found',NULL,34,NULL);
INSERT INTO sighting VALUES(87,'9de1c1f8-c8f0-52d4-b99c-ee000ceafe52','2026-11-02',10,'Y6',281,'2026-05-28','2026-05-28',739764,739764,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(88,'b9f3dafb-e38f-5f1b-9c2a-d3df17386e28','2026-11-02',11,'Y1',288,'2023-03-08','2023-03-08',738587,738587,0,'edtf','seen',NULL,NULL,NULL);
INSERT INTO sighting VALUES(89,'30ddb5f1-9c3c-5d3c-8d1a-5bb337bb2dbd','2026-11-02',11,'Y2',290,'2023-03-08','2023-03-08',738587,738587,0,'edtf','seen',NULL,NULL,'Greyer than the glass round it.');
INSERT INTO sighting VALUES(90,'a33277bf-fee4-56b5-971f-593e0071e87d','2026-11-02',11,'Y3',283,'2023-03-08','2023-03-08',738587,738587,0,'edtf','seen',NULL,NULL,'Crumbs in the tray.');
INSERT INTO sighting VALUES(91,'20d07941-4555-5349-ad27-acda0998133a','2026-11-02',12,'Y1',295,'1973-09','1973-09',720502,720531,0,'edtf','seen',NULL,29,'"Brown stuff, soft in the middle."');
INSERT INTO sighting VALUES(92,'5ebecace-55c3-5086-8368-dfb018d86848','2026-11-02',12,'Y2',297,'1985-04','1985-04',724732,724761,0,'edtf','seen',NULL,31,'Left edge.');
INSERT INTO sighting VALUES(93,'8e2aa318-2b45-51e6-a754-c7aa69697064','2026-11-02',12,'Y3',293,'1985-04','1985-04',724732,724761,0,'edtf','not accessible',NULL,31,NULL);
INSERT INTO sighting VALUES(94,'b226d9cd-9eb3-5f4f-82a6-9528c0fc4b1f','2026-11-02',12,'Y4',302,'1985-05','1985-05',724762,724792,0,'edtf','seen',NULL,31,NULL);
INSERT INTO sighting VALUES(95,'641efc1c-23ed-503a-947b-54924bc89a09','2026-11-02',13,'Y1',307,'2026-06-09','2026-06-09',739776,739776,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(96,'0c34b14e-5ed7-55d1-b07d-3fa36f3660ed','2026-11-02',13,'Y2',313,'2026-06-09','2026-06-09',739776,739776,0,'edtf','seen',NULL,43,NULL);
INSERT INTO sighting VALUES(97,'dd699f74-ca3e-564c-bea6-1fdd072b687b','2026-11-02',13,'Y3',312,'2026-06-09','2026-06-09',739776,739776,0,'edtf','seen',NULL,43,'Two new spots inside.');
INSERT INTO sighting VALUES(98,'aeb72d86-235e-51fb-9949-7f8160fdcc88','2026-11-02',13,'Y4',315,'2021-04','2021-04',737881,737910,0,'edtf','not found',NULL,41,NULL);
INSERT INTO sighting VALUES(99,'e54729b8-b15a-5500-89bd-ba329e9bb11b','2026-11-02',2,'Y01',338,'2013-05-13','2013-05-13',735001,735001,0,'edtf','seen',NULL,37,'Nitrate, little plasticiser left.');
INSERT INTO sighting VALUES(100,'743d6953-d4fb-54bb-baa2-645b73dae004','2026-11-02',2,'Y02',339,'2013-05-13','2013-05-13',735001,735001,0,'edtf','seen',NULL,37,NULL);
INSERT INTO sighting VALUES(101,'0de4dac0-a083-5393-b20f-a186073e3ee5','2026-11-02',2,'Y03',322,'1996-08-12','1996-08-12',728883,728883,0,'edtf','seen','A',33,'Brown line in the body.');
INSERT INTO sighting VALUES(102,'6e7e26f1-b263-59f4-a8eb-ad5415e64edb','2026-11-02',2,'Y04',323,'1996-08-12','1996-08-12',728883,728883,0,'edtf','seen','B',33,NULL);
INSERT INTO sighting VALUES(103,'cc6daae9-da82-53c6-9a8d-2a88eb1ccbb9','2026-11-02',2,'Y05',324,'1996-08-12','1996-08-12',728883,728883,0,'edtf','not found',NULL,33,'Edges clean: Yarrow did this one well.');
INSERT INTO sighting VALUES(104,'9af83190-783c-5ffb-acbe-0b6119eaab67','2026-11-02',2,'Y06',341,'2025-04-08','2025-04-08',739349,739349,0,'edtf','seen',NULL,42,'A string of it on the inside.');
INSERT INTO sighting VALUES(105,'ec5d6e71-a9ad-5db2-bdb2-9345470d288b','2026-11-02',2,'Y07',343,'2025-04-08','2025-04-08',739349,739349,0,'edtf','not accessible',NULL,42,'Under the paint of the neck.');
INSERT INTO sighting VALUES(106,'1fda693c-5bd9-5ec8-844c-cd1fb4df1211','2026-11-02',2,'Y08',316,'2025-04-08','2025-04-08',739349,739349,0,'edtf','seen',NULL,42,NULL);
INSERT INTO sighting VALUES(107,'19df43dd-df73-5efc-ba3c-04ed0591b568','2026-11-02',2,'Y09',355,'2025-04-08','2025-04-08',739349,739349,0,'edtf','seen',NULL,42,'Crazed.');
INSERT INTO sighting VALUES(108,'8b966ca8-0b88-5595-9c44-82e86719c7e9','2026-11-02',2,'Y10',362,'1996-08-12','1996-08-12',728883,728883,0,'edtf','seen',NULL,33,'White skin on the edge.');
INSERT INTO sighting VALUES(109,'7e874d32-675d-53ee-ad81-8375ed6079ad','2026-11-02',2,'Y11',363,'1996-06','1996-06',728811,728840,0,'edtf','seen',NULL,33,NULL);
CREATE TABLE sighting_person (
	sighting_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	role TEXT, 
	CONSTRAINT pk_sighting_person PRIMARY KEY (sighting_id, position), 
	CONSTRAINT fk_sighting_person_person_id FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT fk_sighting_person_sighting_id FOREIGN KEY(sighting_id) REFERENCES sighting (id)
)
 STRICT

;
INSERT INTO sighting_person VALUES(1,0,8,NULL);
INSERT INTO sighting_person VALUES(4,0,12,NULL);
INSERT INTO sighting_person VALUES(5,0,12,NULL);
INSERT INTO sighting_person VALUES(6,0,12,NULL);
INSERT INTO sighting_person VALUES(7,0,15,NULL);
INSERT INTO sighting_person VALUES(8,0,15,NULL);
INSERT INTO sighting_person VALUES(9,0,15,NULL);
INSERT INTO sighting_person VALUES(10,0,15,NULL);
INSERT INTO sighting_person VALUES(11,0,15,NULL);
INSERT INTO sighting_person VALUES(12,0,15,NULL);
INSERT INTO sighting_person VALUES(13,0,14,NULL);
INSERT INTO sighting_person VALUES(14,0,14,NULL);
INSERT INTO sighting_person VALUES(15,0,15,NULL);
INSERT INTO sighting_person VALUES(16,0,14,NULL);
INSERT INTO sighting_person VALUES(17,0,14,NULL);
INSERT INTO sighting_person VALUES(18,0,14,NULL);
INSERT INTO sighting_person VALUES(19,0,15,NULL);
INSERT INTO sighting_person VALUES(20,0,14,NULL);
INSERT INTO sighting_person VALUES(21,0,14,NULL);
INSERT INTO sighting_person VALUES(22,0,14,NULL);
INSERT INTO sighting_person VALUES(23,0,16,NULL);
INSERT INTO sighting_person VALUES(24,0,14,NULL);
INSERT INTO sighting_person VALUES(25,0,14,NULL);
INSERT INTO sighting_person VALUES(26,0,14,NULL);
INSERT INTO sighting_person VALUES(27,0,14,NULL);
INSERT INTO sighting_person VALUES(28,0,14,NULL);
INSERT INTO sighting_person VALUES(29,0,14,NULL);
INSERT INTO sighting_person VALUES(30,0,14,NULL);
INSERT INTO sighting_person VALUES(31,0,14,NULL);
INSERT INTO sighting_person VALUES(32,0,14,NULL);
INSERT INTO sighting_person VALUES(33,0,14,NULL);
INSERT INTO sighting_person VALUES(34,0,16,NULL);
INSERT INTO sighting_person VALUES(35,0,16,NULL);
INSERT INTO sighting_person VALUES(36,0,16,NULL);
INSERT INTO sighting_person VALUES(37,0,17,NULL);
INSERT INTO sighting_person VALUES(38,0,19,NULL);
INSERT INTO sighting_person VALUES(39,0,19,NULL);
INSERT INTO sighting_person VALUES(40,0,17,NULL);
INSERT INTO sighting_person VALUES(41,0,17,NULL);
INSERT INTO sighting_person VALUES(42,0,17,NULL);
INSERT INTO sighting_person VALUES(43,0,17,NULL);
INSERT INTO sighting_person VALUES(44,0,19,NULL);
INSERT INTO sighting_person VALUES(45,0,19,NULL);
INSERT INTO sighting_person VALUES(46,0,19,NULL);
INSERT INTO sighting_person VALUES(47,0,19,NULL);
INSERT INTO sighting_person VALUES(48,0,17,NULL);
INSERT INTO sighting_person VALUES(49,0,17,NULL);
INSERT INTO sighting_person VALUES(50,0,17,NULL);
INSERT INTO sighting_person VALUES(51,0,19,NULL);
INSERT INTO sighting_person VALUES(52,0,19,NULL);
INSERT INTO sighting_person VALUES(53,0,15,NULL);
INSERT INTO sighting_person VALUES(54,0,15,NULL);
INSERT INTO sighting_person VALUES(55,0,15,NULL);
INSERT INTO sighting_person VALUES(56,0,13,NULL);
INSERT INTO sighting_person VALUES(57,0,13,NULL);
INSERT INTO sighting_person VALUES(58,0,13,NULL);
INSERT INTO sighting_person VALUES(59,0,13,NULL);
INSERT INTO sighting_person VALUES(60,0,13,NULL);
INSERT INTO sighting_person VALUES(61,0,8,NULL);
INSERT INTO sighting_person VALUES(62,0,15,NULL);
INSERT INTO sighting_person VALUES(63,0,15,NULL);
INSERT INTO sighting_person VALUES(64,0,15,NULL);
INSERT INTO sighting_person VALUES(65,0,16,NULL);
INSERT INTO sighting_person VALUES(66,0,15,NULL);
INSERT INTO sighting_person VALUES(67,0,15,NULL);
INSERT INTO sighting_person VALUES(68,0,16,NULL);
INSERT INTO sighting_person VALUES(69,0,16,NULL);
INSERT INTO sighting_person VALUES(70,0,14,NULL);
INSERT INTO sighting_person VALUES(72,0,16,NULL);
INSERT INTO sighting_person VALUES(73,0,16,NULL);
INSERT INTO sighting_person VALUES(74,0,14,NULL);
INSERT INTO sighting_person VALUES(75,0,16,NULL);
INSERT INTO sighting_person VALUES(76,0,16,NULL);
INSERT INTO sighting_person VALUES(77,0,16,NULL);
INSERT INTO sighting_person VALUES(78,0,17,NULL);
INSERT INTO sighting_person VALUES(79,0,17,NULL);
INSERT INTO sighting_person VALUES(80,0,15,NULL);
INSERT INTO sighting_person VALUES(81,0,17,NULL);
INSERT INTO sighting_person VALUES(82,0,13,NULL);
INSERT INTO sighting_person VALUES(83,0,19,NULL);
INSERT INTO sighting_person VALUES(84,0,19,NULL);
INSERT INTO sighting_person VALUES(85,0,19,NULL);
INSERT INTO sighting_person VALUES(86,0,13,NULL);
INSERT INTO sighting_person VALUES(87,0,17,NULL);
INSERT INTO sighting_person VALUES(88,0,17,NULL);
INSERT INTO sighting_person VALUES(89,0,17,NULL);
INSERT INTO sighting_person VALUES(90,0,17,NULL);
INSERT INTO sighting_person VALUES(91,0,10,NULL);
INSERT INTO sighting_person VALUES(92,0,12,NULL);
INSERT INTO sighting_person VALUES(93,0,12,NULL);
INSERT INTO sighting_person VALUES(94,0,12,NULL);
INSERT INTO sighting_person VALUES(95,0,16,NULL);
INSERT INTO sighting_person VALUES(96,0,16,NULL);
INSERT INTO sighting_person VALUES(97,0,16,NULL);
INSERT INTO sighting_person VALUES(98,0,16,NULL);
INSERT INTO sighting_person VALUES(99,0,15,NULL);
INSERT INTO sighting_person VALUES(100,0,15,NULL);
INSERT INTO sighting_person VALUES(101,0,13,NULL);
INSERT INTO sighting_person VALUES(102,0,13,NULL);
INSERT INTO sighting_person VALUES(103,0,13,NULL);
INSERT INTO sighting_person VALUES(104,0,17,NULL);
INSERT INTO sighting_person VALUES(105,0,17,NULL);
INSERT INTO sighting_person VALUES(106,0,17,NULL);
INSERT INTO sighting_person VALUES(107,0,17,NULL);
INSERT INTO sighting_person VALUES(108,0,13,NULL);
INSERT INTO sighting_person VALUES(109,0,13,NULL);
CREATE TABLE statement (
	id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	uuid TEXT NOT NULL, 
	entered TEXT NOT NULL, 
	"key" TEXT NOT NULL, 
	subject TEXT NOT NULL, 
	object_id INTEGER, 
	component_id INTEGER, 
	place_id INTEGER, 
	layer_id INTEGER, 
	intervention_id INTEGER, 
	removal_id INTEGER, 
	sighting_id INTEGER, 
	joint_event_id INTEGER, 
	treatment_id INTEGER, 
	field TEXT, 
	value TEXT, 
	material_id INTEGER, 
	source_id INTEGER, 
	page TEXT, 
	date_words TEXT, 
	date_edtf TEXT, 
	date_earliest INTEGER NOT NULL, 
	date_latest INTEGER NOT NULL, 
	date_flags INTEGER NOT NULL, 
	date_derived TEXT NOT NULL, 
	followed TEXT, 
	decided_by_id INTEGER, 
	reason TEXT, 
	note TEXT, 
	CONSTRAINT ck_statement_followed_known CHECK (followed IN ('yes', 'no')), 
	CONSTRAINT ck_statement_subject_known CHECK (subject IN ('object', 'component', 'place', 'layer', 'intervention', 'removal', 'sighting', 'joint_event', 'treatment')), 
	CONSTRAINT ck_statement_one_subject CHECK ((object_id IS NOT NULL) + (component_id IS NOT NULL) + (place_id IS NOT NULL) + (layer_id IS NOT NULL) + (intervention_id IS NOT NULL) + (removal_id IS NOT NULL) + (sighting_id IS NOT NULL) + (joint_event_id IS NOT NULL) + (treatment_id IS NOT NULL) = 1), 
	CONSTRAINT ck_statement_date_in_order CHECK (date_earliest <= date_latest), 
	CONSTRAINT fk_statement_component_id FOREIGN KEY(component_id) REFERENCES component (id), 
	CONSTRAINT fk_statement_decided_by_id FOREIGN KEY(decided_by_id) REFERENCES person (id), 
	CONSTRAINT fk_statement_intervention_id FOREIGN KEY(intervention_id) REFERENCES intervention (id), 
	CONSTRAINT fk_statement_joint_event_id FOREIGN KEY(joint_event_id) REFERENCES joint_event (id), 
	CONSTRAINT fk_statement_layer_id FOREIGN KEY(layer_id) REFERENCES layer (id), 
	CONSTRAINT fk_statement_material_id FOREIGN KEY(material_id) REFERENCES material (id), 
	CONSTRAINT fk_statement_object_id FOREIGN KEY(object_id) REFERENCES object (id), 
	CONSTRAINT fk_statement_place_id FOREIGN KEY(place_id) REFERENCES place (id), 
	CONSTRAINT fk_statement_removal_id FOREIGN KEY(removal_id) REFERENCES removal (id), 
	CONSTRAINT fk_statement_sighting_id FOREIGN KEY(sighting_id) REFERENCES sighting (id), 
	CONSTRAINT fk_statement_source_id FOREIGN KEY(source_id) REFERENCES source (id), 
	CONSTRAINT fk_statement_treatment_id FOREIGN KEY(treatment_id) REFERENCES treatment (id), 
	CONSTRAINT uq_statement_key UNIQUE ("key"), 
	CONSTRAINT uq_statement_uuid UNIQUE (uuid)
)
 STRICT

;
INSERT INTO statement VALUES(1,'c48fd099-a6cd-5717-baac-2b23af153e8e','2026-11-02','ST01','layer',NULL,NULL,NULL,50,NULL,NULL,NULL,NULL,NULL,'material','shellac',48,4,'3','1871-03-09','1871-03-09',683071,683071,0,'edtf','yes',14,'A steward who paid for lac would know; and brown spots are there.','"the fish on the right hand was stuck dry with lack"');
INSERT INTO statement VALUES(2,'c3e3a344-ce5a-519a-bbfe-feb761e210f7','2026-11-02','ST02','layer',NULL,NULL,NULL,50,NULL,NULL,NULL,NULL,NULL,'material','roman-cement',34,3,'1','1868-11-02','1868-11-02',682214,682214,0,'edtf','no',14,'A bill names what is paid for; cement was raked out of this joint in 1934, but from the edge.','"both Dolphins set in best cement"');
INSERT INTO statement VALUES(3,'4790b27a-7fd0-5ee1-b065-f78e54adf56f','2026-11-02','ST03','joint_event',NULL,NULL,NULL,NULL,NULL,NULL,NULL,57,NULL,'event','opened',NULL,3,'1','1868-11-02','1868-11-02',682214,682214,0,'edtf','yes',14,'Followed with a question mark: shellac cannot get into a closed joint.','"taking down & setting 2 Dolphins, 14s."');
INSERT INTO statement VALUES(4,'9f21e251-bff8-53cb-a373-97180401e7ce','2026-11-02','ST04','joint_event',NULL,NULL,NULL,NULL,NULL,NULL,NULL,57,NULL,'event','moving',NULL,4,'2','1871-03-09','1871-03-09',683071,683071,0,'edtf','no',14,'The same letter sticks the dolphin three lines later. The lead in plate 6 looks untouched, which speaks for it.','"never parted from the stone, being cramped, but only shaken"');
INSERT INTO statement VALUES(5,'a2a4baa3-55b6-51ab-b930-1203085fbd71','2026-11-02','ST05','intervention',NULL,NULL,NULL,NULL,5,NULL,NULL,NULL,NULL,'people','Abel Crane (mason)',NULL,3,'1','1868-11-02','1868-11-02',682214,682214,0,'edtf','no',NULL,NULL,'"my son and three men, 11 days"');
INSERT INTO statement VALUES(6,'052b6ecb-09df-56f7-bc79-8082ffcc8347','2026-11-02','ST06','intervention',NULL,NULL,NULL,NULL,5,NULL,NULL,NULL,NULL,'people','men of the estate, not named',NULL,4,'1','1871-03-09','1871-03-09',683071,683071,0,'edtf','no',NULL,NULL,'"our own people, to whom all credit". Neither is followed.');
INSERT INTO statement VALUES(7,'b7ee9081-a5e5-5486-9569-48fb5b9cb5df','2026-11-02','ST07','component',NULL,21,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'origin','replacement',NULL,18,'19','2012-11-30','2012-11-30',734837,734837,0,'edtf','yes',14,'Zinc, wall thickness and a recut recess agree.',NULL);
INSERT INTO statement VALUES(8,'8fc0764d-4fc2-50ed-b431-13b794513fdc','2026-11-02','ST08','component',NULL,21,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'origin','original',NULL,4,'2','1871-03-09','1871-03-09',683071,683071,0,'edtf','no',14,'Written for the owner''s comfort.','"all four Faces came whole"');
INSERT INTO statement VALUES(9,'45ee25a8-8829-56e5-9238-41d66d582c42','2026-11-02','ST09','layer',NULL,NULL,NULL,144,NULL,NULL,NULL,NULL,NULL,'material','methyl-silane',83,13,NULL,'1976-10','1976-10',721628,721658,0,'edtf','no',14,'No silane was bought; the smell she notes fits toluene.',NULL);
INSERT INTO statement VALUES(10,'32351ee3-0ea5-5506-93ce-c5be1ff3d0b6','2026-11-02','ST10','layer',NULL,NULL,NULL,144,NULL,NULL,NULL,NULL,NULL,'material','pnbma',66,14,NULL,'1976-08-17','1976-08-17',721583,721583,0,'edtf','no',14,'Bought that month; nothing says that it was used here.',NULL);
INSERT INTO statement VALUES(11,'864bc4b2-8455-5d6e-8e22-8adbe91576eb','2026-11-02','ST11','layer',NULL,NULL,NULL,144,NULL,NULL,NULL,NULL,NULL,'material','b72',63,18,'6','2012-11-30','2012-11-30',734837,734837,0,'edtf','no',14,'"An acrylic ester, perhaps": not enough to name one.',NULL);
INSERT INTO statement VALUES(12,'c62c66ca-11dc-5584-8b7c-d3a0201580f0','2026-11-02','ST12','intervention',NULL,NULL,NULL,NULL,23,NULL,NULL,NULL,NULL,'date','1967-03-14',NULL,12,NULL,'1967','1967',718067,718431,0,'edtf','yes',14,'Written at the time.',NULL);
INSERT INTO statement VALUES(13,'538eac9a-8314-5bb1-bcc3-bf973cbf9d85','2026-11-02','ST13','intervention',NULL,NULL,NULL,NULL,23,NULL,NULL,NULL,NULL,'date','winter 1962 = 1962-12/1963-02',NULL,16,NULL,'1994-11-08','1994-11-08',728240,728240,0,'edtf','no',14,'Told thirty years later.','"The winter the harbour froze."');
INSERT INTO statement VALUES(14,'591eb346-766b-5bb4-96b2-7cf1c0995f3b','2026-11-02','ST14','component',NULL,17,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','[1941..1944]',NULL,9,NULL,'2024-03-05','2024-03-05',738950,738950,0,'edtf','yes',18,'The print of 1947 has a bare seat; the shed list for 1945 has no urn.',NULL);
INSERT INTO statement VALUES(15,'a2a5e0bd-8762-5f8c-babb-0f74200b51b3','2026-11-02','ST15','component',NULL,17,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','1951',NULL,16,NULL,'1994-11-08','1994-11-08',728240,728240,0,'edtf','no',18,'Gone by 1947.','"Students had it, for a bet."');
INSERT INTO statement VALUES(16,'ecea2001-972b-5243-8d8f-0b9fa213722b','2026-11-02','ST16','layer',NULL,NULL,NULL,114,NULL,NULL,NULL,NULL,NULL,'date','1741',NULL,2,'2','1741','1741',635523,635887,0,'edtf','no',14,NULL,NULL);
INSERT INTO statement VALUES(17,'a9d0ef13-6a4d-579e-bb58-240e7696f483','2026-11-02','ST17','layer',NULL,NULL,NULL,114,NULL,NULL,NULL,NULL,NULL,'date','1868',NULL,3,'1','1868-11-02','1868-11-02',682214,682214,0,'edtf','no',14,NULL,'"lead for cramps, 9 lb."');
INSERT INTO statement VALUES(18,'f6b967cf-f2e9-5372-8826-10391b9ac8fa','2026-11-02','ST18','layer',NULL,NULL,NULL,114,NULL,NULL,NULL,NULL,NULL,'date','[1741,1868]',NULL,17,'plate 6','2011-10-04','2011-10-04',734414,734414,0,'edtf','yes',14,'Either; the plate does not tell.',NULL);
INSERT INTO statement VALUES(19,'c2622cee-1535-5ad4-b055-cc604490ce66','2026-11-02','ST19','place',NULL,NULL,14,NULL,NULL,NULL,NULL,NULL,NULL,'load_kg','85',NULL,18,'14','2012-11-30','2012-11-30',734837,734837,0,'edtf','yes',14,'Volume from the survey; the left dolphin, weighed when it was off, came to 82.',NULL);
INSERT INTO statement VALUES(20,'d2975852-768e-56f9-90af-f388bf366bd9','2026-11-02','ST20','place',NULL,NULL,14,NULL,NULL,NULL,NULL,NULL,NULL,'load_kg','110',NULL,15,'3','1989-07','1989-07',726284,726314,0,'edtf','no',14,'By eye.',NULL);
INSERT INTO statement VALUES(21,'ed8a5319-2b67-5b30-aaeb-e4f1075ef811','2026-11-02','ST21','component',NULL,7,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'mass_kg','141',NULL,18,'14','2012-11-30','2012-11-30',734837,734837,0,'edtf','yes',14,'Volume from the survey.',NULL);
INSERT INTO statement VALUES(22,'845aaec0-bcd1-546f-88ec-0826d611c49e','2026-11-02','ST22','component',NULL,7,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'mass_kg','160',NULL,15,'3','1989-07','1989-07',726284,726314,0,'edtf','no',14,'By eye.',NULL);
INSERT INTO statement VALUES(23,'f06eb8d9-c2ed-500e-a3a3-22d47092c17f','2026-11-02','ST23','sighting',NULL,NULL,NULL,NULL,NULL,NULL,24,NULL,NULL,'result','not found',NULL,18,'9','2012-11-30','2012-11-30',734837,734837,0,'edtf','yes',14,'Looked at with ultraviolet and a drop of acetone in twelve spots.',NULL);
INSERT INTO statement VALUES(24,'f4cab2cd-7ae9-5f50-80eb-aae346f3cce7','2026-11-02','ST24','sighting',NULL,NULL,NULL,NULL,NULL,NULL,24,NULL,NULL,'result','seen',NULL,19,'1','2013-02-04','2013-02-04',734903,734903,0,'edtf','no',14,'He was not there when it was opened.','"It was there, and your hot air took it."');
INSERT INTO statement VALUES(25,'28ca83d6-00d9-51e2-8586-d2a78ce4afe4','2026-11-02','ST25','removal',NULL,NULL,NULL,NULL,NULL,30,NULL,NULL,NULL,'extent','all',NULL,8,'40','1934','1934',706014,706378,0,'edtf','yes',14,'Nothing brown was found in 2012.',NULL);
INSERT INTO statement VALUES(26,'6f552fe5-97dc-5449-822a-212fa7f86b86','2026-11-02','ST26','removal',NULL,NULL,NULL,NULL,NULL,30,NULL,NULL,NULL,'extent','part',NULL,15,'3','1989-07','1989-07',726284,726314,0,'edtf','no',14,'Gives no place for it.','"old brown cement deep at the back"');
INSERT INTO statement VALUES(27,'c224986b-3ffc-5120-bb1c-c480c9b922d5','2026-11-02','ST27','treatment',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,2,'lead','Abel Crane',NULL,3,'1','1868-11-02','1868-11-02',682214,682214,0,'edtf','no',NULL,NULL,'The bill makes him master of the whole work; the letter does not name him.');
INSERT INTO statement VALUES(28,'63eaa0f4-ce87-5ce2-854f-e8a44915c9d8','2026-11-02','ST30','layer',NULL,NULL,NULL,190,NULL,NULL,NULL,NULL,NULL,'material','gum-arabic',57,44,'3','1992-05','1992-05',727319,727349,0,'edtf','no',18,'A guess from the word.',NULL);
INSERT INTO statement VALUES(29,'00d1fe24-a7fb-5118-a962-344e111b4040','2026-11-02','ST31','layer',NULL,NULL,NULL,190,NULL,NULL,NULL,NULL,NULL,'material','gum',NULL,23,'vol. 4',NULL,NULL,-8000000,8000000,0,'blank','yes',18,'Kept as he wrote it: he wrote "glew" too, when he meant glue.',NULL);
INSERT INTO statement VALUES(30,'3b9769e5-1c03-53e4-b6fc-f616452367c5','2026-11-02','ST32','component',NULL,46,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','[1941,1946]',NULL,28,NULL,'1946-09','1946-09',710640,710669,0,'edtf','yes',18,'He unpacked the crate.',NULL);
INSERT INTO statement VALUES(31,'5a61e336-d87e-5bb6-adc8-e7d34f37bf76','2026-11-02','ST33','component',NULL,46,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','before 1911',NULL,35,'2','2003-09','2003-09',731459,731488,0,'edtf','no',18,'The wrist looks long broken; but Yarrow saw the stump of a mend.',NULL);
INSERT INTO statement VALUES(32,'0b344fa9-9d4f-5954-bb1a-f82e073f9ed2','2026-11-02','ST34','layer',NULL,NULL,NULL,219,NULL,NULL,NULL,NULL,NULL,'material','pvac-emulsion',69,30,NULL,'1976','1976',721354,721719,0,'edtf','no',18,'Noted fourteen years later.','"P.V.A. = the white one, Tasker says."');
INSERT INTO statement VALUES(33,'504a600a-4ed7-5840-9f93-f1bf9fb297e1','2026-11-02','ST35','layer',NULL,NULL,NULL,219,NULL,NULL,NULL,NULL,NULL,'material','PVA',NULL,29,NULL,'1962','1962',716241,716605,0,'edtf','yes',18,'As written; not tested.',NULL);
INSERT INTO statement VALUES(34,'d98ac987-5040-5737-bfe8-51d05d85ff1b','2026-11-02','ST36','layer',NULL,NULL,NULL,240,NULL,NULL,NULL,NULL,NULL,'material','cn',61,32,'4','1994-03','1994-03',727988,728018,0,'edtf','no',18,'Infrared, but the spectrum is not in the file.',NULL);
INSERT INTO statement VALUES(35,'f2b069f7-0521-5453-bdc9-5faf19fac935','2026-11-02','ST37','layer',NULL,NULL,NULL,240,NULL,NULL,NULL,NULL,NULL,'material','lacquer',NULL,28,NULL,'1955','1955',713684,714048,0,'edtf','yes',18,'As written, until the spectrum turns up.',NULL);
INSERT INTO statement VALUES(36,'e9dd798f-fa12-5f67-bc53-4e988cfe6235','2026-11-02','ST38','intervention',NULL,NULL,NULL,NULL,105,NULL,NULL,NULL,NULL,'date','c. 1991',NULL,41,'5','2021-11','2021-11',738095,738124,0,'edtf','yes',16,'Stamp on the tube.',NULL);
INSERT INTO statement VALUES(37,'722b95a2-0727-5d18-b1ec-733706217cc7','2026-11-02','ST39','intervention',NULL,NULL,NULL,NULL,105,NULL,NULL,NULL,NULL,'date','after 1993',NULL,1,NULL,'2024-05-16','2024-05-16',739022,739022,0,'edtf','no',16,'The back pane was siliconed before it fell.',NULL);
INSERT INTO statement VALUES(38,'ba53b481-7517-5452-be33-677d9ddc6060','2026-11-02','ST40','component',NULL,108,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','1940/1945',NULL,31,'1','1985','1985',724642,725006,0,'edtf','yes',18,NULL,NULL);
INSERT INTO statement VALUES(39,'a2fe83dc-08fc-532b-976f-33a7f76602cc','2026-11-02','ST41','layer',NULL,NULL,NULL,295,NULL,NULL,NULL,NULL,NULL,'material','shellac',48,29,NULL,'1973-09','1973-09',720502,720531,0,'edtf','no',18,'By look and smell under the lamp.','"Shellac I would say."');
INSERT INTO statement VALUES(40,'5a48543d-cbad-5b3e-8c06-8fe8be9a1219','2026-11-02','ST42','object',10,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'made','1790/1800',NULL,28,NULL,'1958','1958',714780,715144,0,'edtf','yes',18,NULL,NULL);
INSERT INTO statement VALUES(41,'402405f8-44fe-51cc-a002-9a825c51eb62','2026-11-02','ST43','object',10,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'made','c. 1810',NULL,34,'1','1998-05','1998-05',729510,729540,0,'edtf','no',18,'By the foot; the keeper goes by the ship.',NULL);
INSERT INTO statement VALUES(42,'729362b5-7316-5bb0-bf1a-c78148d4a7a3','2026-11-02','ST50','component',NULL,136,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','[1891..1952]',NULL,25,NULL,'1890','1890',689944,690308,0,'edtf','yes',18,'There in the print, not there in 1952.',NULL);
INSERT INTO statement VALUES(43,'a5b98165-fa76-5e68-84bf-9243ab714edb','2026-11-02','ST51','component',NULL,136,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'lost','by 1891-10-06',NULL,24,NULL,'1891-10-06','1891-10-06',690587,690587,0,'edtf','no',18,'"1 wanting" may mean this sherd or the chip at the foot.',NULL);
INSERT INTO statement VALUES(44,'ab99f147-d398-5270-b7fe-3d810af8f925','2026-11-02','ST52','component',NULL,137,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'origin','uncertain',NULL,33,'11','1996-12','1996-12',728994,729024,0,'edtf','yes',18,'Body colour and blue differ; no analysis yet.',NULL);
INSERT INTO statement VALUES(45,'c592f7be-ffe3-54a0-976d-078a62e0a4a1','2026-11-02','ST53','component',NULL,137,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'origin','original',NULL,24,NULL,'1891-10-06','1891-10-06',690587,690587,0,'edtf','no',18,'She numbered what came in the box.',NULL);
INSERT INTO statement VALUES(46,'e469442b-d53f-531c-b244-3a6c7c75d820','2026-11-02','ST54','layer',NULL,NULL,NULL,343,NULL,NULL,NULL,NULL,NULL,'material','pvac',68,33,'7','1996-12','1996-12',728994,729024,0,'edtf','no',18,'A swab test without a written result.',NULL);
INSERT INTO statement VALUES(47,'ac757b73-5f3d-5ea0-b2ed-8241684ccc3c','2026-11-02','ST55','layer',NULL,NULL,NULL,343,NULL,NULL,NULL,NULL,NULL,'material','PVA',NULL,30,NULL,'1978-04','1978-04',722175,722204,0,'edtf','yes',18,'As written.',NULL);
CREATE TABLE statement_person (
	statement_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	person_id INTEGER NOT NULL, 
	role TEXT, 
	CONSTRAINT pk_statement_person PRIMARY KEY (statement_id, position), 
	CONSTRAINT fk_statement_person_person_id FOREIGN KEY(person_id) REFERENCES person (id), 
	CONSTRAINT fk_statement_person_statement_id FOREIGN KEY(statement_id) REFERENCES statement (id)
)
 STRICT

;
INSERT INTO statement_person VALUES(1,0,4,NULL);
INSERT INTO statement_person VALUES(2,0,3,NULL);
INSERT INTO statement_person VALUES(3,0,3,NULL);
INSERT INTO statement_person VALUES(4,0,4,NULL);
INSERT INTO statement_person VALUES(5,0,3,NULL);
INSERT INTO statement_person VALUES(6,0,4,NULL);
INSERT INTO statement_person VALUES(7,0,16,NULL);
INSERT INTO statement_person VALUES(8,0,4,NULL);
INSERT INTO statement_person VALUES(9,0,11,NULL);
INSERT INTO statement_person VALUES(11,0,15,NULL);
INSERT INTO statement_person VALUES(12,0,10,NULL);
INSERT INTO statement_person VALUES(13,0,10,NULL);
INSERT INTO statement_person VALUES(14,0,18,NULL);
INSERT INTO statement_person VALUES(15,0,10,NULL);
INSERT INTO statement_person VALUES(17,0,3,NULL);
INSERT INTO statement_person VALUES(18,0,15,NULL);
INSERT INTO statement_person VALUES(19,0,14,NULL);
INSERT INTO statement_person VALUES(20,0,12,NULL);
INSERT INTO statement_person VALUES(21,0,14,NULL);
INSERT INTO statement_person VALUES(22,0,12,NULL);
INSERT INTO statement_person VALUES(23,0,14,NULL);
INSERT INTO statement_person VALUES(24,0,12,NULL);
INSERT INTO statement_person VALUES(25,0,7,NULL);
INSERT INTO statement_person VALUES(26,0,12,NULL);
INSERT INTO statement_person VALUES(27,0,3,NULL);
INSERT INTO statement_person VALUES(28,0,13,NULL);
INSERT INTO statement_person VALUES(29,0,5,NULL);
INSERT INTO statement_person VALUES(30,0,8,NULL);
INSERT INTO statement_person VALUES(31,0,13,NULL);
INSERT INTO statement_person VALUES(32,0,11,NULL);
INSERT INTO statement_person VALUES(33,0,10,NULL);
INSERT INTO statement_person VALUES(35,0,8,NULL);
INSERT INTO statement_person VALUES(36,0,16,NULL);
INSERT INTO statement_person VALUES(37,0,18,NULL);
INSERT INTO statement_person VALUES(38,0,12,NULL);
INSERT INTO statement_person VALUES(39,0,10,NULL);
INSERT INTO statement_person VALUES(40,0,9,NULL);
INSERT INTO statement_person VALUES(41,0,13,NULL);
INSERT INTO statement_person VALUES(43,0,6,NULL);
INSERT INTO statement_person VALUES(44,0,13,NULL);
INSERT INTO statement_person VALUES(45,0,6,NULL);
INSERT INTO statement_person VALUES(46,0,13,NULL);
INSERT INTO statement_person VALUES(47,0,11,NULL);
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('term',14);
INSERT INTO sqlite_sequence VALUES('material_class',56);
INSERT INTO sqlite_sequence VALUES('material',160);
INSERT INTO sqlite_sequence VALUES('material_part',27);
INSERT INTO sqlite_sequence VALUES('person',19);
INSERT INTO sqlite_sequence VALUES('source',44);
INSERT INTO sqlite_sequence VALUES('object',13);
INSERT INTO sqlite_sequence VALUES('component',141);
INSERT INTO sqlite_sequence VALUES('place',193);
INSERT INTO sqlite_sequence VALUES('treatment',49);
INSERT INTO sqlite_sequence VALUES('intervention',171);
INSERT INTO sqlite_sequence VALUES('agent',35);
INSERT INTO sqlite_sequence VALUES('joint_event',314);
INSERT INTO sqlite_sequence VALUES('layer',363);
INSERT INTO sqlite_sequence VALUES('removal',162);
INSERT INTO sqlite_sequence VALUES('sighting',109);
INSERT INTO sqlite_sequence VALUES('statement',47);
INSERT INTO sqlite_sequence VALUES('warning',29);
INSERT INTO sqlite_sequence VALUES('whereabouts',27);
CREATE INDEX ix_material_class_name_folded ON material_class (name_folded);
CREATE INDEX ix_material_class_parent_id ON material_class (parent_id);
CREATE INDEX ix_object_number_sort ON object (number_sort);
CREATE INDEX ix_object_title_folded ON object (title_folded);
CREATE INDEX ix_source_citation_folded ON source (citation_folded);
CREATE INDEX ix_material_class_id ON material (class_id);
CREATE INDEX ix_material_name_folded ON material (name_folded);
CREATE INDEX ix_person_alias_alias_folded ON person_alias (alias_folded);
CREATE INDEX ix_treatment_ended_derived_ended_latest ON treatment (ended_derived, ended_latest);
CREATE INDEX ix_treatment_lead_id ON treatment (lead_id);
CREATE INDEX ix_component_mark_folded ON component (mark_folded);
CREATE INDEX ix_component_material_id ON component (material_id);
CREATE INDEX ix_component_name_folded ON component (name_folded);
CREATE INDEX ix_component_parent_id ON component (parent_id);
CREATE INDEX ix_intervention_date_latest ON intervention (date_latest);
CREATE INDEX ix_intervention_treatment_id ON intervention (treatment_id);
CREATE INDEX ix_material_alias_alias_folded ON material_alias (alias_folded);
CREATE INDEX ix_material_part_part_id ON material_part (part_id);
CREATE INDEX ix_agent_intervention_id ON agent (intervention_id);
CREATE INDEX ix_agent_material_class_id ON agent (material_class_id);
CREATE INDEX ix_agent_material_id ON agent (material_id);
CREATE INDEX ix_intervention_component_component_id ON intervention_component (component_id);
CREATE INDEX ix_intervention_person_person_id ON intervention_person (person_id);
CREATE INDEX ix_place_component_id ON place (component_id);
CREATE INDEX ix_place_mark_folded ON place (mark_folded);
CREATE INDEX ix_place_name_folded ON place (name_folded);
CREATE INDEX ix_place_other_component_id ON place (other_component_id);
CREATE INDEX ix_agent_place_place_id ON agent_place (place_id);
CREATE INDEX ix_bridge_place_id ON bridge (place_id);
CREATE INDEX ix_intervention_place_place_id ON intervention_place (place_id);
CREATE INDEX ix_joint_event_intervention_id ON joint_event (intervention_id);
CREATE INDEX ix_joint_event_place_id ON joint_event (place_id);
CREATE INDEX ix_joint_event_restless ON joint_event (date_latest) WHERE event IN ('moving', 'failed');
CREATE INDEX ix_layer_intervention_id ON layer (intervention_id);
CREATE INDEX ix_layer_material_class_id_place_id ON layer (material_class_id, place_id);
CREATE INDEX ix_layer_material_id_material_class_id ON layer (material_id, material_class_id);
CREATE INDEX ix_layer_place_id_stack ON layer (place_id, stack);
CREATE INDEX ix_layer_temporary ON layer (place_id) WHERE role IN ('facing', 'temporary support', 'temporary fill', 'temporary consolidant');
CREATE INDEX ix_layer_unplaced ON layer (object_id) WHERE place_id IS NULL;
CREATE INDEX ix_warning_until_latest ON warning (until_latest);
CREATE INDEX ix_layer_candidate_place_id ON layer_candidate (place_id);
CREATE INDEX ix_removal_intervention_id ON removal (intervention_id);
CREATE INDEX ix_removal_layer_id ON removal (layer_id);
CREATE INDEX ix_sighting_layer_id ON sighting (layer_id);
CREATE INDEX ix_sighting_person_person_id ON sighting_person (person_id);
CREATE INDEX ix_statement_component_id ON statement (component_id);
CREATE INDEX ix_statement_intervention_id ON statement (intervention_id);
CREATE INDEX ix_statement_joint_event_id ON statement (joint_event_id);
CREATE INDEX ix_statement_layer_id ON statement (layer_id);
CREATE INDEX ix_statement_material_id ON statement (material_id);
CREATE INDEX ix_statement_object_id ON statement (object_id);
CREATE INDEX ix_statement_place_id ON statement (place_id);
CREATE INDEX ix_statement_removal_id ON statement (removal_id);
CREATE INDEX ix_statement_sighting_id ON statement (sighting_id);
CREATE INDEX ix_statement_treatment_id ON statement (treatment_id);
CREATE INDEX ix_statement_person_person_id ON statement_person (person_id);
COMMIT;
