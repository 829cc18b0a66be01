using System.Globalization;
using Microsoft.Data.Sqlite;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Plans;

/// <summary>
/// Plans in one SQLite file. Written ahead and flushed at every save, so that what was called saved is there after a
/// power cut. A save is one statement that names the revision it follows: of two tabs only one can be first.
/// </summary>
internal sealed class SqlitePlanStore : IPlanStore, IDisposable
{
    /// <summary>Counts the changes of the tables below.</summary>
    internal const long Edition = 1;

    private const string Tables = """
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = FULL;
        CREATE TABLE IF NOT EXISTS plans (
          id TEXT PRIMARY KEY, title TEXT NOT NULL, revision INTEGER NOT NULL, saved_at TEXT NOT NULL,
          content BLOB NOT NULL, removed INTEGER NOT NULL DEFAULT 0) STRICT;
        CREATE TABLE IF NOT EXISTS versions (
          plan_id TEXT NOT NULL, number INTEGER NOT NULL, name TEXT NOT NULL, title TEXT NOT NULL,
          saved_at TEXT NOT NULL, content BLOB NOT NULL, PRIMARY KEY (plan_id, number)) STRICT;
        PRAGMA user_version = 1;
        """;

    private const string Summary = "id, title, revision, saved_at";
    private const string Version = "number, name, title, saved_at";

    private readonly Lock oneAtATime = new();
    private readonly SqliteConnection file;
    private readonly TimeProvider time;

    /// <summary>Opens the file in a folder, and makes it when it is not there yet.</summary>
    /// <exception cref="DataFolderException">It can't be opened.</exception>
    public SqlitePlanStore(DataFolder folder, TimeProvider time)
    {
        this.time = time;
        var place = new SqliteConnectionStringBuilder
        {
            DataSource = Path.Combine(folder.Path, "plans.sqlite"),
            Pooling = false,
        };
        file = new(place.ConnectionString);
        try
        {
            file.Open();
            PlanFileCheck.Look(file, folder.Path);
            using var tables = file.CreateCommand();
            tables.CommandText = Tables;
            tables.ExecuteNonQuery();
        }
        catch (SqliteException problem)
        {
            file.Dispose();
            throw new DataFolderException(
                $"The saved plans in {folder.Path} can't be opened: {problem.Message} {PlanFileCheck.NothingChanged}",
                problem
            );
        }
        catch (DataFolderException)
        {
            file.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<PlanSummary> List() =>
        Ask($"SELECT {Summary} FROM plans WHERE removed = 0 ORDER BY saved_at DESC, id", ReadSummary);

    /// <inheritdoc/>
    public SavedPlan? Find(string id) =>
        Ask(
                $"SELECT {Summary}, content FROM plans WHERE removed = 0 AND id = $id",
                row => new SavedPlan(ReadSummary(row), (byte[])row["content"]),
                ("$id", id)
            )
            .SingleOrDefault();

    /// <inheritdoc/>
    public PlanSummary Add(Plan plan) =>
        Ask(
                $"""
                INSERT INTO plans (id, title, revision, saved_at, content) VALUES ($id, $title, 1, $now, $content)
                RETURNING {Summary}
                """,
                ReadSummary,
                ("$id", Guid.CreateVersion7(time.GetUtcNow()).ToString("n")),
                ("$title", plan.Title),
                ("$now", Now()),
                ("$content", PlanWriter.Write(plan))
            )
            .Single();

    /// <inheritdoc/>
    public (ChangeOutcome Outcome, PlanSummary? Saved) Save(string id, int revision, Plan plan)
    {
        var saved = Ask(
                $"""
                UPDATE plans SET title = $title, revision = revision + 1, saved_at = $now, content = $content
                WHERE id = $id AND removed = 0 AND revision = $revision RETURNING {Summary}
                """,
                ReadSummary,
                ("$id", id),
                ("$revision", revision),
                ("$title", plan.Title),
                ("$now", Now()),
                ("$content", PlanWriter.Write(plan))
            )
            .SingleOrDefault();
        return (saved is null ? WhyNot(id) : ChangeOutcome.Done, saved);
    }

    /// <inheritdoc/>
    public ChangeOutcome Remove(string id, int revision)
    {
        var removed = Ask(
            "UPDATE plans SET removed = 1 WHERE id = $id AND removed = 0 AND revision = $revision RETURNING id",
            row => row.GetString(0),
            ("$id", id),
            ("$revision", revision)
        );
        return removed.Count == 0 ? WhyNot(id) : ChangeOutcome.Done;
    }

    /// <inheritdoc/>
    public VersionSummary? Keep(string id, string name) =>
        Ask(
                $"""
                INSERT INTO versions (plan_id, number, name, title, saved_at, content)
                SELECT id, 1 + (SELECT COUNT(*) FROM versions WHERE plan_id = $id), $name, title, $now, content
                FROM plans WHERE id = $id AND removed = 0 RETURNING {Version}
                """,
                ReadVersion,
                ("$id", id),
                ("$name", name),
                ("$now", Now())
            )
            .SingleOrDefault();

    /// <inheritdoc/>
    public IReadOnlyList<VersionSummary> Versions(string id) =>
        Ask($"SELECT {Version} FROM versions WHERE plan_id = $id ORDER BY number DESC", ReadVersion, ("$id", id));

    /// <inheritdoc/>
    public byte[]? FindVersion(string id, int number) =>
        Ask(
                "SELECT content FROM versions WHERE plan_id = $id AND number = $number",
                row => (byte[])row["content"],
                ("$id", id),
                ("$number", number)
            )
            .SingleOrDefault();

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();

    private static PlanSummary ReadSummary(SqliteDataReader row) =>
        new(row.GetString(0), row.GetString(1), row.GetInt32(2), Moment(row.GetString(3)));

    private static VersionSummary ReadVersion(SqliteDataReader row) =>
        new(row.GetInt32(0), row.GetString(1), row.GetString(2), Moment(row.GetString(3)));

    private static DateTimeOffset Moment(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);

    private string Now() => time.GetUtcNow().ToString("O", CultureInfo.InvariantCulture);

    private ChangeOutcome WhyNot(string id) =>
        Find(id) is null ? ChangeOutcome.NotFound : ChangeOutcome.ChangedMeanwhile;

    private List<T> Ask<T>(
        string statement,
        Func<SqliteDataReader, T> read,
        params (string Name, object Value)[] values
    )
    {
        // One connection: SQLite lets one write at a time anyway, and a save takes milliseconds.
        lock (oneAtATime)
        {
            using var command = file.CreateCommand();
            command.CommandText = statement;
            foreach (var (name, value) in values)
            {
                command.Parameters.AddWithValue(name, value);
            }

            using var rows = command.ExecuteReader();
            var found = new List<T>();
            while (rows.Read())
            {
                found.Add(read(rows));
            }

            return found;
        }
    }
}
