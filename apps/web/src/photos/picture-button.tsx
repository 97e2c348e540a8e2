/** Takes a picture with the camera, or some that are there already. */
export function PictureButton({
  words,
  isCamera = false,
  onFiles,
}: {
  words: string;
  isCamera?: boolean;
  onFiles: (files: File[]) => Promise<void>;
}) {
  return (
    <label className={isCamera ? 'button strong' : 'button'}>
      {words}
      <input
        type="file"
        className="unseen"
        accept="image/*"
        {...(isCamera ? { capture: 'environment' as const } : { multiple: true })}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          // Emptied, so that the same picture can be chosen again.
          event.target.value = '';
          void onFiles(files);
        }}
      />
    </label>
  );
}
