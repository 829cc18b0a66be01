using System.Reflection;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http.Metadata;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Hosting;

/// <summary>A body that may have been refused.</summary>
internal interface IRefusable
{
    /// <summary>Why it was refused, or null.</summary>
    IResult? Refusal { get; }
}

/// <summary>
/// A body read by the field catalogue and never by model binding, which reports one problem at a time and takes
/// misspelt members and missing numbers for given.
/// </summary>
/// <typeparam name="T">Record whose members all carry a <see cref="FieldAttribute"/>.</typeparam>
internal sealed class FileBody<T>
    : IBindableFromHttpContext<FileBody<T>>,
        IEndpointParameterMetadataProvider,
        IRefusable
    where T : class
{
    private readonly T? value;

    private FileBody(T? value, IResult? refusal) => (this.value, Refusal) = (value, refusal);

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <summary>What was read; a handler is called only when there is something.</summary>
    public T Value => value ?? throw new InvalidOperationException("The body was refused.");

    /// <summary>Reads the body of a request.</summary>
    public static async ValueTask<FileBody<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var (bytes, refusal) = await RequestBody.ReadAsync(context.Request);
        if (bytes is null)
        {
            return new(null, refusal);
        }

        var reading = CatalogueReader.Read<T>(bytes);
        return new(reading.Value, reading.Value is null ? Refusals.BadInput(reading.Problems) : null);
    }

    /// <summary>Says in the description of the service that the operation takes a JSON body.</summary>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata(["application/json"], typeof(JsonObject)));
}

/// <summary>Answers with the refusal of a body, so that handlers see good ones only.</summary>
internal sealed class RefusedBodies : IEndpointFilter
{
    /// <inheritdoc/>
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        context.Arguments.OfType<IRefusable>().FirstOrDefault(body => body.Refusal is not null) is { } refused
            ? ValueTask.FromResult<object?>(refused.Refusal)
            : next(context);
}
