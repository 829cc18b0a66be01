using Microsoft.Data.Sqlite;

namespace ShowSafety.Web.Plans;

/// <summary>Looks at the file of saved plans before anything is written to it.</summary>
internal static class PlanFileCheck
{
    /// <summary>What the person who started the service can do.</summary>
    public const string NothingChanged =
        "Nothing was changed. Keep a copy of the folder, and start with another one: --data DIR";

    /// <summary>Refuses a file of a later edition and one that is damaged.</summary>
    /// <exception cref="DataFolderException">It is one of these.</exception>
    /// <exception cref="SqliteException">It is no database.</exception>
    public static void Look(SqliteConnection file, string folder)
    {
        using var ask = file.CreateCommand();
        ask.CommandText = "PRAGMA user_version";
        if (ask.ExecuteScalar() is long edition and > SqlitePlanStore.Edition)
        {
            throw new DataFolderException(
                $"A later version of the program wrote the saved plans in {folder} (edition {edition}, this one knows "
                    + $"{SqlitePlanStore.Edition}). {NothingChanged}"
            );
        }

        ask.CommandText = "PRAGMA quick_check(1)";
        if (ask.ExecuteScalar() is string found and not "ok")
        {
            throw new DataFolderException(
                $"The saved plans in {folder} are damaged: {found.ReplaceLineEndings(" ")}. {NothingChanged}"
            );
        }
    }
}
