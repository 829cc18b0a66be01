using System.Reflection;
using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Scheduling;

/// <summary>The name a tab of the page gives itself in a header, so that its later requests stand for earlier ones.</summary>
internal sealed class TabName : IBindableFromHttpContext<TabName>, IRefusable
{
    /// <summary>The header.</summary>
    public const string Header = "ShowSafety-Tab";

    private const int MostCharacters = 64;

    private TabName(string? value, IResult? refusal) => (Value, Refusal) = (value, refusal);

    /// <summary>The name, or null when the request gives none.</summary>
    public string? Value { get; }

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <summary>Reads the header of a request.</summary>
    public static ValueTask<TabName?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var given = context.Request.Headers[Header];
        var name = given.ToString();
        var read = given.Count switch
        {
            0 => new TabName(null, null),
            1 when name.Length is > 0 and <= MostCharacters => new TabName(name, null),
            _ => new TabName(null, Refused(name)),
        };
        return ValueTask.FromResult<TabName?>(read);
    }

    private static ProblemHttpResult Refused(string name) =>
        Refusals.BadInput(
            "",
            PlanProblemCodes.TooLong,
            name.Length <= 80 ? name : name[..77] + "...",
            $"one name of 1 to {MostCharacters} characters",
            $"The header {Header} takes one name of 1 to {MostCharacters} characters."
        );
}
