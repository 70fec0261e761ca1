BEGIN TRANSACTION;
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0100');
CREATE TABLE alias_notes (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	alias VARCHAR NOT NULL, 
	salt BLOB NOT NULL, 
	seal VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_alias_notes PRIMARY KEY (id), 
	CONSTRAINT fk_alias_notes_game_id_games FOREIGN KEY(game_id) REFERENCES games (id), 
	CONSTRAINT uq_alias_notes_game_id_number UNIQUE (game_id, number)
);
INSERT INTO "alias_notes" VALUES(1,1,1,'Keeper of the Lamp',X'2222222222222222222222222222222222222222222222222222222222222222','c48d12c539c0d6183f3821f3b001bd3ad6e885e3140fab69bc5dedf5a5286e58','2026-03-01 18:30:00.000000');
CREATE TABLE announcing (
	game_id INTEGER NOT NULL, 
	zones JSON NOT NULL, 
	locale VARCHAR NOT NULL, 
	most_characters INTEGER, 
	counts_while_open BOOLEAN NOT NULL, 
	CONSTRAINT pk_announcing PRIMARY KEY (game_id), 
	CONSTRAINT fk_announcing_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "announcing" VALUES(1,'["Australia/Sydney"]','en_GB',500,1);
CREATE TABLE answers (
	game_id INTEGER NOT NULL, 
	title VARCHAR NOT NULL, 
	designer VARCHAR NOT NULL, 
	aliases JSON NOT NULL, 
	salt BLOB NOT NULL, 
	sealed DATETIME NOT NULL, 
	CONSTRAINT pk_answers PRIMARY KEY (game_id), 
	CONSTRAINT fk_answers_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "answers" VALUES(1,'The Lamp Room','Ines Orlay','["Lamplight"]',X'1111111111111111111111111111111111111111111111111111111111111111','2026-03-01 17:00:00.000000');
CREATE TABLE batches (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	digest VARCHAR NOT NULL, 
	name VARCHAR NOT NULL, 
	format VARCHAR NOT NULL, 
	mapping JSON NOT NULL, 
	notes JSON NOT NULL, 
	unreadable JSON NOT NULL, 
	new INTEGER NOT NULL, 
	edited INTEGER NOT NULL, 
	unchanged INTEGER NOT NULL, 
	size BIGINT NOT NULL, 
	copied_at DATETIME NOT NULL, 
	handed_in DATETIME NOT NULL, 
	handed_in_by VARCHAR NOT NULL, unreadable_count INTEGER DEFAULT 0 NOT NULL, gone INTEGER DEFAULT 0 NOT NULL, complete BOOLEAN DEFAULT 0 NOT NULL, copied_told BOOLEAN DEFAULT 0 NOT NULL, first DATETIME, last DATETIME, last_sure DATETIME, taken_back DATETIME, why_taken_back VARCHAR DEFAULT '' NOT NULL, 
	CONSTRAINT pk_batches PRIMARY KEY (id), 
	CONSTRAINT fk_batches_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id), 
	CONSTRAINT uq_batches_round_id_digest UNIQUE (round_id, digest), 
	CONSTRAINT uq_batches_round_id_number UNIQUE (round_id, number)
);
INSERT INTO "batches" VALUES(1,1,1,'d1','first.csv','table','{"text": "Comment"}','[]','[]',1,0,0,60,'2026-03-04 18:10:00.000000','2026-03-04 18:11:00.000000','host',0,0,0,1,'2026-03-02 10:00:00.000000','2026-03-05 19:03:00.000000','2026-03-05 19:03:00.000000',NULL,'');
INSERT INTO "batches" VALUES(2,2,1,'d2','second.csv','table','{"text": "Comment"}','["a note"]','[{"place": "line 9", "text": "half a row", "why": "a cell is missing"}]',4,0,0,600,'2026-03-05 20:00:00.000000','2026-03-05 20:01:00.000000','host',1,0,0,1,'2026-03-02 10:00:00.000000','2026-03-05 19:03:00.000000','2026-03-05 19:03:00.000000',NULL,'');
CREATE TABLE comments (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	batch_id INTEGER NOT NULL, 
	"key" VARCHAR NOT NULL, 
	author VARCHAR NOT NULL, 
	author_id VARCHAR, 
	source_id VARCHAR, 
	reply_to VARCHAR, 
	place VARCHAR NOT NULL, 
	posted_earliest DATETIME NOT NULL, 
	posted_latest DATETIME NOT NULL, 
	edited_earliest DATETIME, 
	edited_latest DATETIME, voter VARCHAR DEFAULT '' NOT NULL, seen_earliest DATETIME, seen_latest DATETIME, text VARCHAR DEFAULT '' NOT NULL, reading VARCHAR, speaks BOOLEAN DEFAULT 1 NOT NULL, older INTEGER DEFAULT 0 NOT NULL, 
	CONSTRAINT pk_comments PRIMARY KEY (id), 
	CONSTRAINT fk_comments_batch_id_batches FOREIGN KEY(batch_id) REFERENCES batches (id), 
	CONSTRAINT fk_comments_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id), 
	CONSTRAINT uq_comments_round_id_key UNIQUE (round_id, "key")
);
INSERT INTO "comments" VALUES(1,1,1,'c0000000000000001','Tove',NULL,NULL,NULL,'line 2','2026-03-02 10:00:00.000000','2026-03-02 10:00:00.000000',NULL,NULL,'tove','2026-03-04 18:10:00.000000','2026-03-04 18:10:00.000000','6',NULL,1,0);
INSERT INTO "comments" VALUES(2,2,2,'c0000000000000002','Maren','user-1','post-1',NULL,'line 2','2026-03-05 19:00:00.000000','2026-03-05 19:00:00.000000','2026-03-05 19:30:00.000000','2026-03-05 19:30:00.000000','user-1','2026-03-05 20:00:00.000000','2026-03-05 20:00:00.000000','7 please',NULL,1,1);
INSERT INTO "comments" VALUES(3,2,2,'c0000000000000003','Tøve  Ødegård',NULL,NULL,NULL,'line 3','2026-03-05 19:01:00.000000','2026-03-05 19:01:00.000000',NULL,NULL,'tøve ødegård','2026-03-05 20:00:00.000000','2026-03-05 20:00:00.000000','page 7',NULL,1,0);
INSERT INTO "comments" VALUES(4,2,2,'c0000000000000004','Ebbe',NULL,NULL,NULL,'line 4','2026-03-05 19:02:00.000000','2026-03-05 19:02:00.000000',NULL,NULL,'ebbe','2026-03-05 20:00:00.000000','2026-03-05 20:00:00.000000','2 or 10',NULL,1,0);
INSERT INTO "comments" VALUES(5,2,2,'c0000000000000005','Odd',NULL,NULL,NULL,'line 5','2026-03-05 19:03:00.000000','2026-03-05 19:03:00.000000',NULL,NULL,'odd',NULL,NULL,'Is it The Lamp Room?',NULL,1,0);
CREATE TABLE desk_links (
	id INTEGER NOT NULL, 
	digest VARCHAR NOT NULL, 
	made DATETIME NOT NULL, 
	ends DATETIME NOT NULL, 
	CONSTRAINT pk_desk_links PRIMARY KEY (id), 
	CONSTRAINT uq_desk_links_digest UNIQUE (digest)
);
CREATE TABLE desk_passwords (
	id INTEGER NOT NULL, 
	hash VARCHAR NOT NULL, 
	since DATETIME NOT NULL, 
	tried INTEGER NOT NULL, 
	tried_since DATETIME NOT NULL, 
	CONSTRAINT pk_desk_passwords PRIMARY KEY (id)
);
CREATE TABLE desk_sessions (
	id INTEGER NOT NULL, 
	digest VARCHAR NOT NULL, 
	way VARCHAR NOT NULL, 
	began DATETIME NOT NULL, 
	ends DATETIME NOT NULL, draft JSON, 
	CONSTRAINT pk_desk_sessions PRIMARY KEY (id), 
	CONSTRAINT ck_desk_sessions_way CHECK (way IN ('link', 'password')), 
	CONSTRAINT uq_desk_sessions_digest UNIQUE (digest)
);
INSERT INTO "desk_sessions" VALUES(1,'e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0','link','2026-03-01 17:00:00.000000','2026-03-15 17:00:00.000000',NULL);
CREATE TABLE draw_numbers (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	place INTEGER NOT NULL, 
	numbers JSON NOT NULL, 
	reason VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_draw_numbers PRIMARY KEY (id), 
	CONSTRAINT fk_draw_numbers_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id)
);
INSERT INTO "draw_numbers" VALUES(1,1,1,'["4", "19"]','','2026-03-04 18:15:00.000000');
CREATE TABLE draw_values (
	round_id INTEGER NOT NULL, 
	value BLOB NOT NULL, 
	CONSTRAINT pk_draw_values PRIMARY KEY (round_id), 
	CONSTRAINT fk_draw_values_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id)
);
INSERT INTO "draw_values" VALUES(2,X'3333333333333333333333333333333333333333333333333333333333333333');
CREATE TABLE forgotten_games (
	game_id INTEGER NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_forgotten_games PRIMARY KEY (game_id), 
	CONSTRAINT fk_forgotten_games_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
CREATE TABLE forgotten_voters (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	digest VARCHAR NOT NULL, 
	is_name BOOLEAN NOT NULL, 
	name_alone BOOLEAN NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_forgotten_voters PRIMARY KEY (id), 
	CONSTRAINT fk_forgotten_voters_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id), 
	CONSTRAINT uq_forgotten_voters_round_id_digest_is_name UNIQUE (round_id, digest, is_name)
);
CREATE TABLE games (
	id INTEGER NOT NULL, 
	slug VARCHAR NOT NULL, 
	name VARCHAR NOT NULL, 
	zone VARCHAR NOT NULL, 
	chart JSON NOT NULL, 
	next_from VARCHAR NOT NULL, 
	hosts JSON NOT NULL, 
	languages JSON NOT NULL, 
	wants VARCHAR NOT NULL, 
	names_per_comment INTEGER NOT NULL, 
	guesses_open DATETIME, 
	guesses_close DATETIME, 
	seal VARCHAR, 
	created DATETIME NOT NULL, 
	changes INTEGER NOT NULL, columns JSON, guesses_per_voter INTEGER, revealed DATETIME, 
	CONSTRAINT pk_games PRIMARY KEY (id), 
	CONSTRAINT uq_games_slug UNIQUE (slug)
);
INSERT INTO "games" VALUES(1,'harbour','The harbour mystery','Atlantic/Faroe','{"columns": 4, "rows": 3, "order": "across", "start": "top left", "back_and_forth": false, "no_page": [], "joined": "edge", "size": null}','the previous page','["Island Guild"]','["en"]','title',1,'2026-03-01 18:00:00.000000',NULL,'a4f1db9d6dd845bf65c6c437ed03f8138e5fa0aaa8f5e67c3b344cc1cd038c0b','2026-03-01 17:00:00.000000',5,'{"text": "Comment"}',3,NULL);
CREATE TABLE guess_picks (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	"key" VARCHAR NOT NULL, 
	reason VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_guess_picks PRIMARY KEY (id), 
	CONSTRAINT fk_guess_picks_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "guess_picks" VALUES(1,1,'c0000000000000005','hers stood above','2026-03-05 21:00:00.000000');
CREATE TABLE "guess_rulings" (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	"key" VARCHAR NOT NULL, 
	outcome VARCHAR, 
	reason VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	in_time BOOLEAN, 
	CONSTRAINT pk_guess_rulings PRIMARY KEY (id), 
	CONSTRAINT fk_guess_rulings_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "guess_rulings" VALUES(1,1,'c0000000000000005','right','that is it','2026-03-05 21:00:00.000000',1);
CREATE TABLE kept_guesses (
	comment_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	outcome VARCHAR NOT NULL, 
	CONSTRAINT pk_kept_guesses PRIMARY KEY (comment_id, number), 
	CONSTRAINT fk_kept_guesses_comment_id_comments FOREIGN KEY(comment_id) REFERENCES comments (id)
);
CREATE TABLE log_entries (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	day DATE NOT NULL, 
	how VARCHAR NOT NULL, 
	amount INTEGER NOT NULL, 
	page INTEGER, 
	piece VARCHAR NOT NULL, 
	fractional INTEGER NOT NULL, 
	backstitch INTEGER NOT NULL, 
	beads INTEGER NOT NULL, 
	first DATE, 
	corrects INTEGER, 
	taken_back BOOLEAN NOT NULL, 
	note VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_log_entries PRIMARY KEY (id), 
	CONSTRAINT fk_log_entries_game_id_games FOREIGN KEY(game_id) REFERENCES games (id), 
	CONSTRAINT uq_log_entries_game_id_number UNIQUE (game_id, number)
);
INSERT INTO "log_entries" VALUES(1,1,1,'2026-03-05','on the day',120,6,'',0,0,0,NULL,NULL,0,'a calm evening','2026-03-05 21:00:00.000000');
CREATE TABLE pace_plans (
	game_id INTEGER NOT NULL, 
	every INTEGER, 
	round_days INTEGER NOT NULL, 
	margin_days INTEGER NOT NULL, 
	shows JSON NOT NULL, 
	CONSTRAINT pk_pace_plans PRIMARY KEY (game_id), 
	CONSTRAINT fk_pace_plans_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "pace_plans" VALUES(1,4900,3,1,'["page"]');
CREATE TABLE page_stitches (
	game_id INTEGER NOT NULL, 
	page INTEGER NOT NULL, 
	crosses INTEGER, 
	fractional INTEGER, 
	backstitch INTEGER, 
	beads INTEGER, 
	CONSTRAINT pk_page_stitches PRIMARY KEY (game_id, page), 
	CONSTRAINT fk_page_stitches_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "page_stitches" VALUES(1,6,3100,NULL,240,NULL);
CREATE TABLE pages (
	game_id INTEGER NOT NULL, 
	page INTEGER NOT NULL, 
	state VARCHAR NOT NULL, 
	since DATETIME NOT NULL, 
	CONSTRAINT pk_pages PRIMARY KEY (game_id, page), 
	CONSTRAINT ck_pages_state CHECK (state IN ('stitched', 'in hand')), 
	CONSTRAINT fk_pages_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "pages" VALUES(1,6,'in hand','2026-03-04 18:00:00.000000');
CREATE TABLE picks (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	page INTEGER NOT NULL, 
	reason VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_picks PRIMARY KEY (id), 
	CONSTRAINT fk_picks_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id)
);
INSERT INTO "picks" VALUES(1,1,6,'the thread is here','2026-03-04 18:20:00.000000');
CREATE TABLE prizes (
	game_id INTEGER NOT NULL, 
	offer VARCHAR NOT NULL, 
	choose_from VARCHAR NOT NULL, 
	claim_days INTEGER NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_prizes PRIMARY KEY (game_id), 
	CONSTRAINT fk_prizes_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "prizes" VALUES(1,'a skein of thread','the colour card',14,'2026-03-01 17:30:00.000000');
CREATE TABLE revisions (
	id INTEGER NOT NULL, 
	round_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	announced DATETIME NOT NULL, 
	reason VARCHAR, 
	result JSON NOT NULL, 
	record TEXT, 
	digest VARCHAR, 
	CONSTRAINT pk_revisions PRIMARY KEY (id), 
	CONSTRAINT fk_revisions_round_id_rounds FOREIGN KEY(round_id) REFERENCES rounds (id), 
	CONSTRAINT uq_revisions_round_id_number UNIQUE (round_id, number)
);
INSERT INTO "revisions" VALUES(1,1,1,'2026-03-04 18:30:00.000000',NULL,'{"winner": 6, "tally": [{"page": 6, "votes": 1}], "steps": [], "why": "Page 6 has the most votes.", "comments": 1, "ballots": 1, "set_aside": {}, "looks": 0, "looks_why": "No comment needs a look.", "announcement": "Page 6 wins."}','{"format":"loopstart record 1","note":"as it was announced"}','abababababababababababababababababababababababababababababababab');
CREATE TABLE rounds (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	state VARCHAR NOT NULL, 
	opens DATETIME, 
	closes DATETIME, 
	choices INTEGER NOT NULL, 
	standing VARCHAR NOT NULL, 
	tie_breaks JSON NOT NULL, 
	given_previous INTEGER, 
	previous INTEGER, 
	votable JSON, 
	stitched JSON, 
	languages JSON, 
	widened BOOLEAN NOT NULL, 
	why VARCHAR NOT NULL, 
	created DATETIME NOT NULL, 
	opened DATETIME, 
	closed DATETIME, 
	announced DATETIME, 
	result JSON, 
	changes INTEGER NOT NULL, read_by VARCHAR, runoff_of INTEGER, sources JSON, commitment VARCHAR, hosts JSON, salt VARCHAR, 
	CONSTRAINT pk_rounds PRIMARY KEY (id), 
	CONSTRAINT ck_rounds_state CHECK (state IN ('draft', 'open', 'closed', 'announced')), 
	CONSTRAINT fk_rounds_game_id_games FOREIGN KEY(game_id) REFERENCES games (id), 
	CONSTRAINT uq_rounds_game_id_number UNIQUE (game_id, number)
);
INSERT INTO "rounds" VALUES(1,1,1,'announced','2026-03-01 18:00:00.000000','2026-03-04 18:00:00.000000',1,'latest','["most joined edges", "lowest number"]',NULL,NULL,'[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]','[]','["en"]',0,'It is the first round: any page may be chosen.','2026-03-01 17:00:00.000000','2026-03-01 18:00:00.000000','2026-03-04 18:00:00.000000','2026-03-04 18:30:00.000000','{"winner": 6, "tally": [{"page": 6, "votes": 1}], "steps": [], "why": "Page 6 has the most votes.", "comments": 1, "ballots": 1, "set_aside": {}, "looks": 0, "looks_why": "No comment needs a look.", "announcement": "Page 6 wins."}',4,'an earlier reader',NULL,NULL,NULL,'["Island Guild"]','11111111111111111111111111111111');
INSERT INTO "rounds" VALUES(2,1,2,'open','2026-03-05 18:00:00.000000',NULL,1,'latest','["most joined edges", "draw"]',NULL,6,'[2, 5, 7, 10]','[6]','["en"]',0,'These pages are joined to page 6.','2026-03-05 17:00:00.000000','2026-03-05 18:00:00.000000',NULL,NULL,NULL,3,'an earlier reader',NULL,'[]','deb0e38ced1e41de6f92e70e80c418d2d356afaaa99e26f5939dbc7d3ef4772a','["Island Guild"]','22222222222222222222222222222222');
CREATE TABLE rulings (
	id INTEGER NOT NULL, 
	comment_id INTEGER NOT NULL, 
	pages JSON NOT NULL, 
	withdraws BOOLEAN NOT NULL, 
	in_time BOOLEAN, 
	reason VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_rulings PRIMARY KEY (id), 
	CONSTRAINT fk_rulings_comment_id_comments FOREIGN KEY(comment_id) REFERENCES comments (id)
);
INSERT INTO "rulings" VALUES(1,4,'[10]',0,NULL,'she said so; below it','2026-03-05 21:00:00.000000');
CREATE TABLE templates (
	game_id INTEGER NOT NULL, 
	occasion VARCHAR NOT NULL, 
	length VARCHAR NOT NULL, 
	text VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_templates PRIMARY KEY (game_id, occasion, length), 
	CONSTRAINT fk_templates_game_id_games FOREIGN KEY(game_id) REFERENCES games (id)
);
INSERT INTO "templates" VALUES(1,'opening','short','Vote for a page of $game now','2026-03-01 17:40:00.000000');
CREATE TABLE tokens (
	id INTEGER NOT NULL, 
	name VARCHAR NOT NULL, 
	role VARCHAR NOT NULL, 
	digest VARCHAR NOT NULL, 
	created DATETIME NOT NULL, 
	CONSTRAINT pk_tokens PRIMARY KEY (id), 
	CONSTRAINT ck_tokens_role CHECK (role IN ('host', 'collector')), 
	CONSTRAINT uq_tokens_digest UNIQUE (digest), 
	CONSTRAINT uq_tokens_name UNIQUE (name)
);
INSERT INTO "tokens" VALUES(1,'host','host','5ce7d2e5f1c9cb7a3ee6c1ddf52e4bd4a4fd3ba5d9c9fe0dfbae30ae1cc7cbd2','2026-03-01 17:00:00.000000');
CREATE TABLE versions (
	id INTEGER NOT NULL, 
	comment_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	text VARCHAR NOT NULL, 
	written_earliest DATETIME NOT NULL, 
	written_latest DATETIME NOT NULL, 
	seen_earliest DATETIME, 
	seen_latest DATETIME, reading VARCHAR, 
	CONSTRAINT pk_versions PRIMARY KEY (id), 
	CONSTRAINT fk_versions_comment_id_comments FOREIGN KEY(comment_id) REFERENCES comments (id), 
	CONSTRAINT uq_versions_comment_id_number UNIQUE (comment_id, number)
);
INSERT INTO "versions" VALUES(2,2,1,'5 please','2026-03-05 19:00:00.000000','2026-03-05 19:00:00.000000','2026-03-05 19:10:00.000000','2026-03-05 19:10:00.000000',NULL);
CREATE TABLE waiting_exports (
	id INTEGER NOT NULL, 
	digest VARCHAR NOT NULL, 
	owner INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	name VARCHAR NOT NULL, 
	since DATETIME NOT NULL, 
	CONSTRAINT pk_waiting_exports PRIMARY KEY (id), 
	CONSTRAINT fk_waiting_exports_game_id_games FOREIGN KEY(game_id) REFERENCES games (id), 
	CONSTRAINT uq_waiting_exports_digest UNIQUE (digest)
);
CREATE TABLE waiting_pieces (
	export_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	content BLOB NOT NULL, 
	CONSTRAINT pk_waiting_pieces PRIMARY KEY (export_id, number), 
	CONSTRAINT fk_waiting_pieces_export_id_waiting_exports FOREIGN KEY(export_id) REFERENCES waiting_exports (id) ON DELETE CASCADE
);
CREATE TABLE watched_requests (
	watch VARCHAR NOT NULL, 
	step VARCHAR NOT NULL, 
	done INTEGER NOT NULL, 
	total INTEGER NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT pk_watched_requests PRIMARY KEY (watch)
);
CREATE TABLE winners (
	id INTEGER NOT NULL, 
	game_id INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	"key" VARCHAR NOT NULL, 
	voter VARCHAR NOT NULL, 
	author VARCHAR NOT NULL, 
	written_earliest DATETIME NOT NULL, 
	written_latest DATETIME NOT NULL, 
	cause VARCHAR NOT NULL, 
	reason VARCHAR NOT NULL, 
	announcement VARCHAR NOT NULL, 
	at DATETIME NOT NULL, 
	claim_by DATETIME, 
	asked_for VARCHAR NOT NULL, 
	asked_at DATETIME, 
	sent_at DATETIME, 
	passed_on DATETIME, 
	CONSTRAINT pk_winners PRIMARY KEY (id), 
	CONSTRAINT fk_winners_game_id_games FOREIGN KEY(game_id) REFERENCES games (id), 
	CONSTRAINT uq_winners_game_id_number UNIQUE (game_id, number)
);
CREATE UNIQUE INDEX uq_rounds_game_id_open ON rounds (game_id) WHERE state = 'open';
CREATE INDEX ix_picks_round_id ON picks (round_id);
CREATE INDEX ix_rulings_comment_id ON rulings (comment_id);
CREATE INDEX ix_draw_numbers_round_id ON draw_numbers (round_id);
CREATE INDEX ix_guess_rulings_game_id ON guess_rulings (game_id);
CREATE INDEX ix_guess_picks_game_id ON guess_picks (game_id);
CREATE INDEX ix_waiting_exports_game_id ON waiting_exports (game_id);
CREATE INDEX ix_waiting_exports_since ON waiting_exports (since);
COMMIT;
