using ShowSafety.Web.Health;
using ShowSafety.Web.Hosting;

var builder = LocalHost.CreateBuilder(args);
builder.Services.AddProblemDetails();

var app = builder.Build();
app.UseSecurityHeaders();
app.UseExceptionHandler();
app.UseProblemForEmptyErrors();
app.UsePage();
app.UseRouting();

app.MapHealth();

return await app.RunAndSayAddressAsync(Console.Out, Console.Error);
