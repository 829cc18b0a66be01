using System.Text.Json;
using System.Text.Json.Serialization;

namespace ShowSafety.Web.Hosting;

/// <summary>How small bodies are read and answers are written; plans have a reader of their own.</summary>
internal static class Json
{
    /// <summary>Refuses what the defaults let through: misspelt, missing, doubled and null members, numbers as text.</summary>
    public static void BeStrict(JsonSerializerOptions options)
    {
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.RespectNullableAnnotations = true;
        options.RespectRequiredConstructorParameters = true;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.AllowDuplicateProperties = false;
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
    }
}
