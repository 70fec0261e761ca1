CREATE TABLE public.alembic_version (
    version_num character varying(32) NOT NULL
);
CREATE TABLE public.alias_notes (
    id integer NOT NULL,
    game_id integer NOT NULL,
    number integer NOT NULL,
    alias character varying NOT NULL,
    salt bytea NOT NULL,
    seal character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.alias_notes_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.alias_notes_id_seq OWNED BY public.alias_notes.id;
CREATE TABLE public.announcing (
    game_id integer NOT NULL,
    zones json NOT NULL,
    locale character varying NOT NULL,
    most_characters integer,
    counts_while_open boolean NOT NULL
);
CREATE TABLE public.answers (
    game_id integer NOT NULL,
    title character varying NOT NULL,
    designer character varying NOT NULL,
    aliases json NOT NULL,
    salt bytea NOT NULL,
    sealed timestamp with time zone NOT NULL
);
CREATE TABLE public.batches (
    id integer NOT NULL,
    round_id integer NOT NULL,
    number integer NOT NULL,
    digest character varying NOT NULL,
    name character varying NOT NULL,
    format character varying NOT NULL,
    mapping json NOT NULL,
    notes json NOT NULL,
    unreadable json NOT NULL,
    new integer NOT NULL,
    edited integer NOT NULL,
    unchanged integer NOT NULL,
    size bigint NOT NULL,
    copied_at timestamp with time zone NOT NULL,
    handed_in timestamp with time zone NOT NULL,
    handed_in_by character varying NOT NULL,
    unreadable_count integer DEFAULT 0 NOT NULL,
    gone integer DEFAULT 0 NOT NULL,
    complete boolean DEFAULT false NOT NULL,
    copied_told boolean DEFAULT false NOT NULL,
    first timestamp with time zone,
    last timestamp with time zone,
    last_sure timestamp with time zone,
    taken_back timestamp with time zone,
    why_taken_back character varying DEFAULT ''::character varying NOT NULL
);
CREATE SEQUENCE public.batches_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.batches_id_seq OWNED BY public.batches.id;
CREATE TABLE public.comments (
    id integer NOT NULL,
    round_id integer NOT NULL,
    batch_id integer NOT NULL,
    key character varying NOT NULL,
    author character varying NOT NULL,
    author_id character varying,
    source_id character varying,
    reply_to character varying,
    place character varying NOT NULL,
    posted_earliest timestamp with time zone NOT NULL,
    posted_latest timestamp with time zone NOT NULL,
    edited_earliest timestamp with time zone,
    edited_latest timestamp with time zone,
    voter character varying DEFAULT ''::character varying NOT NULL,
    seen_earliest timestamp with time zone,
    seen_latest timestamp with time zone,
    text character varying DEFAULT ''::character varying NOT NULL,
    reading character varying,
    speaks boolean DEFAULT true NOT NULL,
    older integer DEFAULT 0 NOT NULL
);
CREATE SEQUENCE public.comments_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.comments_id_seq OWNED BY public.comments.id;
CREATE TABLE public.desk_links (
    id integer NOT NULL,
    digest character varying NOT NULL,
    made timestamp with time zone NOT NULL,
    ends timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.desk_links_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.desk_links_id_seq OWNED BY public.desk_links.id;
CREATE TABLE public.desk_passwords (
    id integer NOT NULL,
    hash character varying NOT NULL,
    since timestamp with time zone NOT NULL,
    tried integer NOT NULL,
    tried_since timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.desk_passwords_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.desk_passwords_id_seq OWNED BY public.desk_passwords.id;
CREATE TABLE public.desk_sessions (
    id integer NOT NULL,
    digest character varying NOT NULL,
    way character varying NOT NULL,
    began timestamp with time zone NOT NULL,
    ends timestamp with time zone NOT NULL,
    draft json,
    CONSTRAINT ck_desk_sessions_way CHECK (((way)::text = ANY ((ARRAY['link'::character varying, 'password'::character varying])::text[])))
);
CREATE SEQUENCE public.desk_sessions_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.desk_sessions_id_seq OWNED BY public.desk_sessions.id;
CREATE TABLE public.draw_numbers (
    id integer NOT NULL,
    round_id integer NOT NULL,
    place integer NOT NULL,
    numbers json NOT NULL,
    reason character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.draw_numbers_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.draw_numbers_id_seq OWNED BY public.draw_numbers.id;
CREATE TABLE public.draw_values (
    round_id integer NOT NULL,
    value bytea NOT NULL
);
CREATE TABLE public.forgotten_games (
    game_id integer NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE TABLE public.forgotten_voters (
    id integer NOT NULL,
    round_id integer NOT NULL,
    digest character varying NOT NULL,
    is_name boolean NOT NULL,
    name_alone boolean NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.forgotten_voters_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.forgotten_voters_id_seq OWNED BY public.forgotten_voters.id;
CREATE TABLE public.games (
    id integer NOT NULL,
    slug character varying NOT NULL,
    name character varying NOT NULL,
    zone character varying NOT NULL,
    chart json NOT NULL,
    next_from character varying NOT NULL,
    hosts json NOT NULL,
    languages json NOT NULL,
    wants character varying NOT NULL,
    names_per_comment integer NOT NULL,
    guesses_open timestamp with time zone,
    guesses_close timestamp with time zone,
    seal character varying,
    created timestamp with time zone NOT NULL,
    changes integer NOT NULL,
    columns json,
    guesses_per_voter integer,
    revealed timestamp with time zone
);
CREATE SEQUENCE public.games_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.games_id_seq OWNED BY public.games.id;
CREATE TABLE public.guess_picks (
    id integer NOT NULL,
    game_id integer NOT NULL,
    key character varying NOT NULL,
    reason character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.guess_picks_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.guess_picks_id_seq OWNED BY public.guess_picks.id;
CREATE TABLE public.guess_rulings (
    id integer NOT NULL,
    game_id integer NOT NULL,
    key character varying NOT NULL,
    outcome character varying,
    reason character varying NOT NULL,
    at timestamp with time zone NOT NULL,
    in_time boolean
);
CREATE SEQUENCE public.guess_rulings_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.guess_rulings_id_seq OWNED BY public.guess_rulings.id;
CREATE TABLE public.kept_guesses (
    comment_id integer NOT NULL,
    number integer NOT NULL,
    outcome character varying NOT NULL
);
CREATE TABLE public.log_entries (
    id integer NOT NULL,
    game_id integer NOT NULL,
    number integer NOT NULL,
    day date NOT NULL,
    how character varying NOT NULL,
    amount integer NOT NULL,
    page integer,
    piece character varying NOT NULL,
    fractional integer NOT NULL,
    backstitch integer NOT NULL,
    beads integer NOT NULL,
    first date,
    corrects integer,
    taken_back boolean NOT NULL,
    note character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.log_entries_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.log_entries_id_seq OWNED BY public.log_entries.id;
CREATE TABLE public.pace_plans (
    game_id integer NOT NULL,
    every integer,
    round_days integer NOT NULL,
    margin_days integer NOT NULL,
    shows json NOT NULL
);
CREATE TABLE public.page_stitches (
    game_id integer NOT NULL,
    page integer NOT NULL,
    crosses integer,
    fractional integer,
    backstitch integer,
    beads integer
);
CREATE TABLE public.pages (
    game_id integer NOT NULL,
    page integer NOT NULL,
    state character varying NOT NULL,
    since timestamp with time zone NOT NULL,
    CONSTRAINT ck_pages_state CHECK (((state)::text = ANY ((ARRAY['stitched'::character varying, 'in hand'::character varying])::text[])))
);
CREATE TABLE public.picks (
    id integer NOT NULL,
    round_id integer NOT NULL,
    page integer NOT NULL,
    reason character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.picks_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.picks_id_seq OWNED BY public.picks.id;
CREATE TABLE public.prizes (
    game_id integer NOT NULL,
    offer character varying NOT NULL,
    choose_from character varying NOT NULL,
    claim_days integer NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE TABLE public.revisions (
    id integer NOT NULL,
    round_id integer NOT NULL,
    number integer NOT NULL,
    announced timestamp with time zone NOT NULL,
    reason character varying,
    result json NOT NULL,
    record text,
    digest character varying
);
CREATE SEQUENCE public.revisions_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.revisions_id_seq OWNED BY public.revisions.id;
CREATE TABLE public.rounds (
    id integer NOT NULL,
    game_id integer NOT NULL,
    number integer NOT NULL,
    state character varying NOT NULL,
    opens timestamp with time zone,
    closes timestamp with time zone,
    choices integer NOT NULL,
    standing character varying NOT NULL,
    tie_breaks json NOT NULL,
    given_previous integer,
    previous integer,
    votable json,
    stitched json,
    languages json,
    widened boolean NOT NULL,
    why character varying NOT NULL,
    created timestamp with time zone NOT NULL,
    opened timestamp with time zone,
    closed timestamp with time zone,
    announced timestamp with time zone,
    result json,
    changes integer NOT NULL,
    read_by character varying,
    runoff_of integer,
    sources json,
    commitment character varying,
    hosts json,
    salt character varying,
    CONSTRAINT ck_rounds_state CHECK (((state)::text = ANY ((ARRAY['draft'::character varying, 'open'::character varying, 'closed'::character varying, 'announced'::character varying])::text[])))
);
CREATE SEQUENCE public.rounds_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.rounds_id_seq OWNED BY public.rounds.id;
CREATE TABLE public.rulings (
    id integer NOT NULL,
    comment_id integer NOT NULL,
    pages json NOT NULL,
    withdraws boolean NOT NULL,
    in_time boolean,
    reason character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE SEQUENCE public.rulings_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.rulings_id_seq OWNED BY public.rulings.id;
CREATE TABLE public.templates (
    game_id integer NOT NULL,
    occasion character varying NOT NULL,
    length character varying NOT NULL,
    text character varying NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE TABLE public.tokens (
    id integer NOT NULL,
    name character varying NOT NULL,
    role character varying NOT NULL,
    digest character varying NOT NULL,
    created timestamp with time zone NOT NULL,
    CONSTRAINT ck_tokens_role CHECK (((role)::text = ANY ((ARRAY['host'::character varying, 'collector'::character varying])::text[])))
);
CREATE SEQUENCE public.tokens_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.tokens_id_seq OWNED BY public.tokens.id;
CREATE TABLE public.versions (
    id integer NOT NULL,
    comment_id integer NOT NULL,
    number integer NOT NULL,
    text character varying NOT NULL,
    written_earliest timestamp with time zone NOT NULL,
    written_latest timestamp with time zone NOT NULL,
    seen_earliest timestamp with time zone,
    seen_latest timestamp with time zone,
    reading character varying
);
CREATE SEQUENCE public.versions_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.versions_id_seq OWNED BY public.versions.id;
CREATE UNLOGGED TABLE public.waiting_exports (
    id integer NOT NULL,
    digest character varying NOT NULL,
    owner integer NOT NULL,
    game_id integer NOT NULL,
    name character varying NOT NULL,
    since timestamp with time zone NOT NULL
);
CREATE UNLOGGED SEQUENCE public.waiting_exports_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.waiting_exports_id_seq OWNED BY public.waiting_exports.id;
CREATE UNLOGGED TABLE public.waiting_pieces (
    export_id integer NOT NULL,
    number integer NOT NULL,
    content bytea NOT NULL
);
CREATE UNLOGGED TABLE public.watched_requests (
    watch character varying NOT NULL,
    step character varying NOT NULL,
    done integer NOT NULL,
    total integer NOT NULL,
    at timestamp with time zone NOT NULL
);
CREATE TABLE public.winners (
    id integer NOT NULL,
    game_id integer NOT NULL,
    number integer NOT NULL,
    key character varying NOT NULL,
    voter character varying NOT NULL,
    author character varying NOT NULL,
    written_earliest timestamp with time zone NOT NULL,
    written_latest timestamp with time zone NOT NULL,
    cause character varying NOT NULL,
    reason character varying NOT NULL,
    announcement character varying NOT NULL,
    at timestamp with time zone NOT NULL,
    claim_by timestamp with time zone,
    asked_for character varying NOT NULL,
    asked_at timestamp with time zone,
    sent_at timestamp with time zone,
    passed_on timestamp with time zone
);
CREATE SEQUENCE public.winners_id_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.winners_id_seq OWNED BY public.winners.id;
ALTER TABLE ONLY public.alias_notes ALTER COLUMN id SET DEFAULT nextval('public.alias_notes_id_seq'::regclass);
ALTER TABLE ONLY public.batches ALTER COLUMN id SET DEFAULT nextval('public.batches_id_seq'::regclass);
ALTER TABLE ONLY public.comments ALTER COLUMN id SET DEFAULT nextval('public.comments_id_seq'::regclass);
ALTER TABLE ONLY public.desk_links ALTER COLUMN id SET DEFAULT nextval('public.desk_links_id_seq'::regclass);
ALTER TABLE ONLY public.desk_passwords ALTER COLUMN id SET DEFAULT nextval('public.desk_passwords_id_seq'::regclass);
ALTER TABLE ONLY public.desk_sessions ALTER COLUMN id SET DEFAULT nextval('public.desk_sessions_id_seq'::regclass);
ALTER TABLE ONLY public.draw_numbers ALTER COLUMN id SET DEFAULT nextval('public.draw_numbers_id_seq'::regclass);
ALTER TABLE ONLY public.forgotten_voters ALTER COLUMN id SET DEFAULT nextval('public.forgotten_voters_id_seq'::regclass);
ALTER TABLE ONLY public.games ALTER COLUMN id SET DEFAULT nextval('public.games_id_seq'::regclass);
ALTER TABLE ONLY public.guess_picks ALTER COLUMN id SET DEFAULT nextval('public.guess_picks_id_seq'::regclass);
ALTER TABLE ONLY public.guess_rulings ALTER COLUMN id SET DEFAULT nextval('public.guess_rulings_id_seq'::regclass);
ALTER TABLE ONLY public.log_entries ALTER COLUMN id SET DEFAULT nextval('public.log_entries_id_seq'::regclass);
ALTER TABLE ONLY public.picks ALTER COLUMN id SET DEFAULT nextval('public.picks_id_seq'::regclass);
ALTER TABLE ONLY public.revisions ALTER COLUMN id SET DEFAULT nextval('public.revisions_id_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN id SET DEFAULT nextval('public.rounds_id_seq'::regclass);
ALTER TABLE ONLY public.rulings ALTER COLUMN id SET DEFAULT nextval('public.rulings_id_seq'::regclass);
ALTER TABLE ONLY public.tokens ALTER COLUMN id SET DEFAULT nextval('public.tokens_id_seq'::regclass);
ALTER TABLE ONLY public.versions ALTER COLUMN id SET DEFAULT nextval('public.versions_id_seq'::regclass);
ALTER TABLE ONLY public.waiting_exports ALTER COLUMN id SET DEFAULT nextval('public.waiting_exports_id_seq'::regclass);
ALTER TABLE ONLY public.winners ALTER COLUMN id SET DEFAULT nextval('public.winners_id_seq'::regclass);
INSERT INTO public.alembic_version VALUES ('0100');
INSERT INTO public.alias_notes VALUES (1, 1, 1, 'Keeper of the Lamp', '\x2222222222222222222222222222222222222222222222222222222222222222', 'c48d12c539c0d6183f3821f3b001bd3ad6e885e3140fab69bc5dedf5a5286e58', '2026-03-01 18:30:00+00');
INSERT INTO public.announcing VALUES (1, '["Australia/Sydney"]', 'en_GB', 500, true);
INSERT INTO public.answers VALUES (1, 'The Lamp Room', 'Ines Orlay', '["Lamplight"]', '\x1111111111111111111111111111111111111111111111111111111111111111', '2026-03-01 17:00:00+00');
INSERT INTO public.batches VALUES (1, 1, 1, 'd1', 'first.csv', 'table', '{"text": "Comment"}', '[]', '[]', 1, 0, 0, 60, '2026-03-04 18:10:00+00', '2026-03-04 18:11:00+00', 'host', 0, 0, false, true, '2026-03-02 10:00:00+00', '2026-03-05 19:03:00+00', '2026-03-05 19:03:00+00', NULL, '');
INSERT INTO public.batches VALUES (2, 2, 1, 'd2', 'second.csv', 'table', '{"text": "Comment"}', '["a note"]', '[{"place": "line 9", "text": "half a row", "why": "a cell is missing"}]', 4, 0, 0, 600, '2026-03-05 20:00:00+00', '2026-03-05 20:01:00+00', 'host', 1, 0, false, true, '2026-03-02 10:00:00+00', '2026-03-05 19:03:00+00', '2026-03-05 19:03:00+00', NULL, '');
INSERT INTO public.comments VALUES (1, 1, 1, 'c0000000000000001', 'Tove', NULL, NULL, NULL, 'line 2', '2026-03-02 10:00:00+00', '2026-03-02 10:00:00+00', NULL, NULL, 'tove', '2026-03-04 18:10:00+00', '2026-03-04 18:10:00+00', '6', NULL, true, 0);
INSERT INTO public.comments VALUES (2, 2, 2, 'c0000000000000002', 'Maren', 'user-1', 'post-1', NULL, 'line 2', '2026-03-05 19:00:00+00', '2026-03-05 19:00:00+00', '2026-03-05 19:30:00+00', '2026-03-05 19:30:00+00', 'user-1', '2026-03-05 20:00:00+00', '2026-03-05 20:00:00+00', '7 please', NULL, true, 1);
INSERT INTO public.comments VALUES (3, 2, 2, 'c0000000000000003', 'Tøve  Ødegård', NULL, NULL, NULL, 'line 3', '2026-03-05 19:01:00+00', '2026-03-05 19:01:00+00', NULL, NULL, 'tøve ødegård', '2026-03-05 20:00:00+00', '2026-03-05 20:00:00+00', 'page 7', NULL, true, 0);
INSERT INTO public.comments VALUES (4, 2, 2, 'c0000000000000004', 'Ebbe', NULL, NULL, NULL, 'line 4', '2026-03-05 19:02:00+00', '2026-03-05 19:02:00+00', NULL, NULL, 'ebbe', '2026-03-05 20:00:00+00', '2026-03-05 20:00:00+00', '2 or 10', NULL, true, 0);
INSERT INTO public.comments VALUES (5, 2, 2, 'c0000000000000005', 'Odd', NULL, NULL, NULL, 'line 5', '2026-03-05 19:03:00+00', '2026-03-05 19:03:00+00', NULL, NULL, 'odd', NULL, NULL, 'Is it The Lamp Room?', NULL, true, 0);
INSERT INTO public.desk_sessions VALUES (1, 'e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0e0', 'link', '2026-03-01 17:00:00+00', '2026-03-15 17:00:00+00', NULL);
INSERT INTO public.draw_numbers VALUES (1, 1, 1, '["4", "19"]', '', '2026-03-04 18:15:00+00');
INSERT INTO public.draw_values VALUES (2, '\x3333333333333333333333333333333333333333333333333333333333333333');
INSERT INTO public.games VALUES (1, 'harbour', 'The harbour mystery', 'Atlantic/Faroe', '{"columns": 4, "rows": 3, "order": "across", "start": "top left", "back_and_forth": false, "no_page": [], "joined": "edge", "size": null}', 'the previous page', '["Island Guild"]', '["en"]', 'title', 1, '2026-03-01 18:00:00+00', NULL, 'a4f1db9d6dd845bf65c6c437ed03f8138e5fa0aaa8f5e67c3b344cc1cd038c0b', '2026-03-01 17:00:00+00', 5, '{"text": "Comment"}', 3, NULL);
INSERT INTO public.guess_picks VALUES (1, 1, 'c0000000000000005', 'hers stood above', '2026-03-05 21:00:00+00');
INSERT INTO public.guess_rulings VALUES (1, 1, 'c0000000000000005', 'right', 'that is it', '2026-03-05 21:00:00+00', true);
INSERT INTO public.log_entries VALUES (1, 1, 1, '2026-03-05', 'on the day', 120, 6, '', 0, 0, 0, NULL, NULL, false, 'a calm evening', '2026-03-05 21:00:00+00');
INSERT INTO public.pace_plans VALUES (1, 4900, 3, 1, '["page"]');
INSERT INTO public.page_stitches VALUES (1, 6, 3100, NULL, 240, NULL);
INSERT INTO public.pages VALUES (1, 6, 'in hand', '2026-03-04 18:00:00+00');
INSERT INTO public.picks VALUES (1, 1, 6, 'the thread is here', '2026-03-04 18:20:00+00');
INSERT INTO public.prizes VALUES (1, 'a skein of thread', 'the colour card', 14, '2026-03-01 17:30:00+00');
INSERT INTO public.revisions VALUES (1, 1, 1, '2026-03-04 18:30:00+00', NULL, '{"winner": 6, "tally": [{"page": 6, "votes": 1}], "steps": [], "why": "Page 6 has the most votes.", "comments": 1, "ballots": 1, "set_aside": {}, "looks": 0, "looks_why": "No comment needs a look.", "announcement": "Page 6 wins."}', '{"format":"loopstart record 1","note":"as it was announced"}', 'abababababababababababababababababababababababababababababababab');
INSERT INTO public.rounds VALUES (1, 1, 1, 'announced', '2026-03-01 18:00:00+00', '2026-03-04 18:00:00+00', 1, 'latest', '["most joined edges", "lowest number"]', NULL, NULL, '[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]', '[]', '["en"]', false, 'It is the first round: any page may be chosen.', '2026-03-01 17:00:00+00', '2026-03-01 18:00:00+00', '2026-03-04 18:00:00+00', '2026-03-04 18:30:00+00', '{"winner": 6, "tally": [{"page": 6, "votes": 1}], "steps": [], "why": "Page 6 has the most votes.", "comments": 1, "ballots": 1, "set_aside": {}, "looks": 0, "looks_why": "No comment needs a look.", "announcement": "Page 6 wins."}', 4, 'an earlier reader', NULL, NULL, NULL, '["Island Guild"]', '11111111111111111111111111111111');
INSERT INTO public.rounds VALUES (2, 1, 2, 'open', '2026-03-05 18:00:00+00', NULL, 1, 'latest', '["most joined edges", "draw"]', NULL, 6, '[2, 5, 7, 10]', '[6]', '["en"]', false, 'These pages are joined to page 6.', '2026-03-05 17:00:00+00', '2026-03-05 18:00:00+00', NULL, NULL, NULL, 3, 'an earlier reader', NULL, '[]', 'deb0e38ced1e41de6f92e70e80c418d2d356afaaa99e26f5939dbc7d3ef4772a', '["Island Guild"]', '22222222222222222222222222222222');
INSERT INTO public.rulings VALUES (1, 4, '[10]', false, NULL, 'she said so; below it', '2026-03-05 21:00:00+00');
INSERT INTO public.templates VALUES (1, 'opening', 'short', 'Vote for a page of $game now', '2026-03-01 17:40:00+00');
INSERT INTO public.tokens VALUES (1, 'host', 'host', '5ce7d2e5f1c9cb7a3ee6c1ddf52e4bd4a4fd3ba5d9c9fe0dfbae30ae1cc7cbd2', '2026-03-01 17:00:00+00');
INSERT INTO public.versions VALUES (2, 2, 1, '5 please', '2026-03-05 19:00:00+00', '2026-03-05 19:00:00+00', '2026-03-05 19:10:00+00', '2026-03-05 19:10:00+00', NULL);
SELECT pg_catalog.setval('public.alias_notes_id_seq', 100, true);
SELECT pg_catalog.setval('public.batches_id_seq', 100, true);
SELECT pg_catalog.setval('public.comments_id_seq', 100, true);
SELECT pg_catalog.setval('public.desk_links_id_seq', 100, true);
SELECT pg_catalog.setval('public.desk_passwords_id_seq', 100, true);
SELECT pg_catalog.setval('public.desk_sessions_id_seq', 100, true);
SELECT pg_catalog.setval('public.draw_numbers_id_seq', 100, true);
SELECT pg_catalog.setval('public.forgotten_voters_id_seq', 100, true);
SELECT pg_catalog.setval('public.games_id_seq', 100, true);
SELECT pg_catalog.setval('public.guess_picks_id_seq', 100, true);
SELECT pg_catalog.setval('public.guess_rulings_id_seq', 100, true);
SELECT pg_catalog.setval('public.log_entries_id_seq', 100, true);
SELECT pg_catalog.setval('public.picks_id_seq', 100, true);
SELECT pg_catalog.setval('public.revisions_id_seq', 100, true);
SELECT pg_catalog.setval('public.rounds_id_seq', 100, true);
SELECT pg_catalog.setval('public.rulings_id_seq', 100, true);
SELECT pg_catalog.setval('public.tokens_id_seq', 100, true);
SELECT pg_catalog.setval('public.versions_id_seq', 100, true);
SELECT pg_catalog.setval('public.waiting_exports_id_seq', 100, true);
SELECT pg_catalog.setval('public.winners_id_seq', 100, true);
ALTER TABLE ONLY public.alembic_version
    ADD CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num);
ALTER TABLE ONLY public.alias_notes
    ADD CONSTRAINT pk_alias_notes PRIMARY KEY (id);
ALTER TABLE ONLY public.announcing
    ADD CONSTRAINT pk_announcing PRIMARY KEY (game_id);
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT pk_answers PRIMARY KEY (game_id);
ALTER TABLE ONLY public.batches
    ADD CONSTRAINT pk_batches PRIMARY KEY (id);
ALTER TABLE ONLY public.comments
    ADD CONSTRAINT pk_comments PRIMARY KEY (id);
ALTER TABLE ONLY public.desk_links
    ADD CONSTRAINT pk_desk_links PRIMARY KEY (id);
ALTER TABLE ONLY public.desk_passwords
    ADD CONSTRAINT pk_desk_passwords PRIMARY KEY (id);
ALTER TABLE ONLY public.desk_sessions
    ADD CONSTRAINT pk_desk_sessions PRIMARY KEY (id);
ALTER TABLE ONLY public.draw_numbers
    ADD CONSTRAINT pk_draw_numbers PRIMARY KEY (id);
ALTER TABLE ONLY public.draw_values
    ADD CONSTRAINT pk_draw_values PRIMARY KEY (round_id);
ALTER TABLE ONLY public.forgotten_games
    ADD CONSTRAINT pk_forgotten_games PRIMARY KEY (game_id);
ALTER TABLE ONLY public.forgotten_voters
    ADD CONSTRAINT pk_forgotten_voters PRIMARY KEY (id);
ALTER TABLE ONLY public.games
    ADD CONSTRAINT pk_games PRIMARY KEY (id);
ALTER TABLE ONLY public.guess_picks
    ADD CONSTRAINT pk_guess_picks PRIMARY KEY (id);
ALTER TABLE ONLY public.guess_rulings
    ADD CONSTRAINT pk_guess_rulings PRIMARY KEY (id);
ALTER TABLE ONLY public.kept_guesses
    ADD CONSTRAINT pk_kept_guesses PRIMARY KEY (comment_id, number);
ALTER TABLE ONLY public.log_entries
    ADD CONSTRAINT pk_log_entries PRIMARY KEY (id);
ALTER TABLE ONLY public.pace_plans
    ADD CONSTRAINT pk_pace_plans PRIMARY KEY (game_id);
ALTER TABLE ONLY public.page_stitches
    ADD CONSTRAINT pk_page_stitches PRIMARY KEY (game_id, page);
ALTER TABLE ONLY public.pages
    ADD CONSTRAINT pk_pages PRIMARY KEY (game_id, page);
ALTER TABLE ONLY public.picks
    ADD CONSTRAINT pk_picks PRIMARY KEY (id);
ALTER TABLE ONLY public.prizes
    ADD CONSTRAINT pk_prizes PRIMARY KEY (game_id);
ALTER TABLE ONLY public.revisions
    ADD CONSTRAINT pk_revisions PRIMARY KEY (id);
ALTER TABLE ONLY public.rounds
    ADD CONSTRAINT pk_rounds PRIMARY KEY (id);
ALTER TABLE ONLY public.rulings
    ADD CONSTRAINT pk_rulings PRIMARY KEY (id);
ALTER TABLE ONLY public.templates
    ADD CONSTRAINT pk_templates PRIMARY KEY (game_id, occasion, length);
ALTER TABLE ONLY public.tokens
    ADD CONSTRAINT pk_tokens PRIMARY KEY (id);
ALTER TABLE ONLY public.versions
    ADD CONSTRAINT pk_versions PRIMARY KEY (id);
ALTER TABLE ONLY public.waiting_exports
    ADD CONSTRAINT pk_waiting_exports PRIMARY KEY (id);
ALTER TABLE ONLY public.waiting_pieces
    ADD CONSTRAINT pk_waiting_pieces PRIMARY KEY (export_id, number);
ALTER TABLE ONLY public.watched_requests
    ADD CONSTRAINT pk_watched_requests PRIMARY KEY (watch);
ALTER TABLE ONLY public.winners
    ADD CONSTRAINT pk_winners PRIMARY KEY (id);
ALTER TABLE ONLY public.alias_notes
    ADD CONSTRAINT uq_alias_notes_game_id_number UNIQUE (game_id, number);
ALTER TABLE ONLY public.batches
    ADD CONSTRAINT uq_batches_round_id_digest UNIQUE (round_id, digest);
ALTER TABLE ONLY public.batches
    ADD CONSTRAINT uq_batches_round_id_number UNIQUE (round_id, number);
ALTER TABLE ONLY public.comments
    ADD CONSTRAINT uq_comments_round_id_key UNIQUE (round_id, key);
ALTER TABLE ONLY public.desk_links
    ADD CONSTRAINT uq_desk_links_digest UNIQUE (digest);
ALTER TABLE ONLY public.desk_sessions
    ADD CONSTRAINT uq_desk_sessions_digest UNIQUE (digest);
ALTER TABLE ONLY public.forgotten_voters
    ADD CONSTRAINT uq_forgotten_voters_round_id_digest_is_name UNIQUE (round_id, digest, is_name);
ALTER TABLE ONLY public.games
    ADD CONSTRAINT uq_games_slug UNIQUE (slug);
ALTER TABLE ONLY public.log_entries
    ADD CONSTRAINT uq_log_entries_game_id_number UNIQUE (game_id, number);
ALTER TABLE ONLY public.revisions
    ADD CONSTRAINT uq_revisions_round_id_number UNIQUE (round_id, number);
ALTER TABLE ONLY public.rounds
    ADD CONSTRAINT uq_rounds_game_id_number UNIQUE (game_id, number);
ALTER TABLE ONLY public.tokens
    ADD CONSTRAINT uq_tokens_digest UNIQUE (digest);
ALTER TABLE ONLY public.tokens
    ADD CONSTRAINT uq_tokens_name UNIQUE (name);
ALTER TABLE ONLY public.versions
    ADD CONSTRAINT uq_versions_comment_id_number UNIQUE (comment_id, number);
ALTER TABLE ONLY public.waiting_exports
    ADD CONSTRAINT uq_waiting_exports_digest UNIQUE (digest);
ALTER TABLE ONLY public.winners
    ADD CONSTRAINT uq_winners_game_id_number UNIQUE (game_id, number);
CREATE INDEX ix_draw_numbers_round_id ON public.draw_numbers USING btree (round_id);
CREATE INDEX ix_guess_picks_game_id ON public.guess_picks USING btree (game_id);
CREATE INDEX ix_guess_rulings_game_id ON public.guess_rulings USING btree (game_id);
CREATE INDEX ix_picks_round_id ON public.picks USING btree (round_id);
CREATE INDEX ix_rulings_comment_id ON public.rulings USING btree (comment_id);
CREATE INDEX ix_waiting_exports_game_id ON public.waiting_exports USING btree (game_id);
CREATE INDEX ix_waiting_exports_since ON public.waiting_exports USING btree (since);
CREATE UNIQUE INDEX uq_rounds_game_id_open ON public.rounds USING btree (game_id) WHERE ((state)::text = 'open'::text);
ALTER TABLE ONLY public.alias_notes
    ADD CONSTRAINT fk_alias_notes_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.announcing
    ADD CONSTRAINT fk_announcing_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT fk_answers_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.batches
    ADD CONSTRAINT fk_batches_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.comments
    ADD CONSTRAINT fk_comments_batch_id_batches FOREIGN KEY (batch_id) REFERENCES public.batches(id);
ALTER TABLE ONLY public.comments
    ADD CONSTRAINT fk_comments_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.draw_numbers
    ADD CONSTRAINT fk_draw_numbers_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.draw_values
    ADD CONSTRAINT fk_draw_values_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.forgotten_games
    ADD CONSTRAINT fk_forgotten_games_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.forgotten_voters
    ADD CONSTRAINT fk_forgotten_voters_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.guess_picks
    ADD CONSTRAINT fk_guess_picks_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.guess_rulings
    ADD CONSTRAINT fk_guess_rulings_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.kept_guesses
    ADD CONSTRAINT fk_kept_guesses_comment_id_comments FOREIGN KEY (comment_id) REFERENCES public.comments(id);
ALTER TABLE ONLY public.log_entries
    ADD CONSTRAINT fk_log_entries_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.pace_plans
    ADD CONSTRAINT fk_pace_plans_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.page_stitches
    ADD CONSTRAINT fk_page_stitches_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.pages
    ADD CONSTRAINT fk_pages_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.picks
    ADD CONSTRAINT fk_picks_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.prizes
    ADD CONSTRAINT fk_prizes_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.revisions
    ADD CONSTRAINT fk_revisions_round_id_rounds FOREIGN KEY (round_id) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.rounds
    ADD CONSTRAINT fk_rounds_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.rulings
    ADD CONSTRAINT fk_rulings_comment_id_comments FOREIGN KEY (comment_id) REFERENCES public.comments(id);
ALTER TABLE ONLY public.templates
    ADD CONSTRAINT fk_templates_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.versions
    ADD CONSTRAINT fk_versions_comment_id_comments FOREIGN KEY (comment_id) REFERENCES public.comments(id);
ALTER TABLE ONLY public.waiting_exports
    ADD CONSTRAINT fk_waiting_exports_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
ALTER TABLE ONLY public.waiting_pieces
    ADD CONSTRAINT fk_waiting_pieces_export_id_waiting_exports FOREIGN KEY (export_id) REFERENCES public.waiting_exports(id) ON DELETE CASCADE;
ALTER TABLE ONLY public.winners
    ADD CONSTRAINT fk_winners_game_id_games FOREIGN KEY (game_id) REFERENCES public.games(id);
